import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { Outcome } from '@windlass/core/basis';
import { readSessionFile } from '@windlass/core/schema';
import type { SessionQuestion } from '@windlass/core/session';

/**
 * Reads a plan file. `client`, `gym` and `intent` stand in it, or the name of another file beside
 * it stands in their place.
 */
export function readPlanFile(path: string): Outcome<SessionQuestion> {
  const file = readJson(path);
  if (!file.ok) return file;
  if (!isRecord(file.value)) return readSessionFile(file.value);
  const parts: Record<string, unknown> = { ...file.value };
  for (const name of ['client', 'gym', 'intent']) {
    const part = parts[name];
    if (typeof part !== 'string') continue;
    const other = readJson(resolve(dirname(path), part));
    if (!other.ok) return other;
    parts[name] = other.value;
  }
  return readSessionFile(parts);
}

function readJson(path: string): Outcome<unknown> {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    return problem('file.unreadable', `There is no file ${path} that can be read.`);
  }
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\uFEFF/u, '')) };
  } catch (error) {
    return problem('file.not-json', `${path} is not JSON: ${(error as Error).message}`);
  }
}

function problem(code: string, message: string): Outcome<never> {
  return { ok: false, problems: [{ code, path: [], message }] };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
