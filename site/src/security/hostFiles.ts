import { cacheControl } from '../../offline/cacheControl.ts';
import { securityHeaders } from '../lib/security.ts';
import { words } from './words.ts';

/** A file that makes a host send the headers. */
export interface HostFile {
  readonly host: string;
  /** Where the file goes. */
  readonly goes: string;
  readonly text: string;
}

/** Folder of the files whose names change with their content. */
const ASSETS = '/assets/';
const headers = Object.entries(securityHeaders);
const kept = cacheControl(ASSETS);
const asked = cacheControl('/');

/** The same headers for the hosts that static sites stand on most, from the one list of them. */
export const hostFiles: readonly HostFile[] = [
  { ...words.hosts.headerFile, text: headerFile() },
  { ...words.hosts.nginx, text: nginx() },
  { ...words.hosts.apache, text: apache() },
];

/** Files of this kind add up the rules that match, so one address has no header from two of them. */
function headerFile(): string {
  const all = ['/*', ...headers.map(([name, value]) => `  ${name}: ${value}`)];
  return [...all, `${ASSETS}*`, `  Cache-Control: ${kept}`].join('\n');
}

/** One level of `add_header`: a second one inside a `location` would take the first away. */
function nginx(): string {
  const lines = [
    ...headers.map(([name, value]) => `  add_header ${name} "${value}" always;`),
    '  add_header Cache-Control $windlass_cache always;',
  ];
  return [
    'map $uri $windlass_cache {',
    `  default "${asked}";`,
    `  ~^.*${ASSETS} "${kept}";`,
    '}',
    'server {',
    '  root /path/to/the/site;',
    '  error_page 404 /404.html;',
    ...lines,
    '}',
  ].join('\n');
}

function apache(): string {
  return [
    'ErrorDocument 404 /404.html',
    ...headers.map(([name, value]) => `Header always set ${name} "${value}"`),
    `Header set Cache-Control "${asked}"`,
    `<If "%{REQUEST_URI} =~ m#${ASSETS}#">`,
    `  Header set Cache-Control "${kept}"`,
    '</If>',
  ].join('\n');
}
