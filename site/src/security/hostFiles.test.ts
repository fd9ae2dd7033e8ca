import { describe, expect, it } from 'vitest';
import { securityHeaders } from '../lib/security.ts';
import { hostFiles } from './hostFiles.ts';

const [headerFile = '', nginx = '', apache = ''] = hostFiles.map(({ text }) => text);

/** The headers that a host would send by its file, read back by the rules of its own format. */
function headersIn(text: string, line: RegExp): Readonly<Record<string, string>> {
  return Object.fromEntries([...text.matchAll(line)].map(([, name, value]) => [name, value]));
}

describe('the files for hosts', () => {
  it.each([
    ['a header file', headerFile, /^ {2}([\w-]+): (.*)$/gm],
    ['nginx', nginx, /^ {2}add_header ([\w-]+) "(.*)" always;$/gm],
    ['Apache', apache, /^Header always set ([\w-]+) "(.*)"$/gm],
  ])('%s: have every header with its value', (_, text, line) => {
    expect(headersIn(text, line)).toMatchObject(securityHeaders);
  });

  it('have no value that ends its own quotes or names a variable', () => {
    for (const value of Object.values(securityHeaders)) expect(value).not.toMatch(/["$\\\n]/);
  });

  it('let browsers keep files for good only where the name changes with the content', () => {
    expect(headerFile).toMatch(/\n\/assets\/\*\n {2}Cache-Control: .*immutable$/);
    expect(nginx).toMatch(/default "no-cache";\n {2}~\^\.\*\/assets\/ ".*immutable";/);
    expect(apache).toMatch(/m#\/assets\/#">\n {2}Header set Cache-Control ".*immutable"/);
  });

  it('keep one block of headers in nginx, where an inner block would replace the outer', () => {
    expect(nginx).not.toMatch(/^\s*location /m);
  });
});
