import { CopyButton } from '@windlass/calculators/ui';
import { useRef } from 'preact/hooks';
import { href } from '../lib/href.ts';
import { saveFile } from './saveFile.ts';
import { fileOf } from './state/fileOf.ts';
import { getAt, type Json } from './state/tree.ts';
import { words } from './words.ts';

interface FilesProps {
  readonly draft: Json;
  readonly link: () => string;
  readonly onOpen: (draft: Json) => void;
  readonly onNotice: (message: string) => void;
}

/** Taking the plan along, as a link, on paper or as a file; and bringing one back. */
export function Files({ draft, link, onOpen, onNotice }: FilesProps) {
  const input = useRef<HTMLInputElement>(null);
  const open = async (file: File) => {
    const { openFile } = await import('./state/openFile.ts');
    const opened = openFile(await file.text(), draft);
    if (opened.kind === 'not-json') return onNotice(words.notice.notJson(file.name));
    if (opened.kind === 'wrong') {
      const first = opened.problems[0]?.message ?? '';
      return onNotice(words.notice.wrongFile(file.name, first, opened.problems.length));
    }
    onOpen(opened.draft);
    onNotice(words.notice.opened(file.name, opened.kept));
  };
  const save = (name: string, content: Json) =>
    saveFile(name, `${JSON.stringify(fileOf(content), null, 2)}\n`);
  const buttons = [
    [words.actions.print, () => print()],
    [words.actions.save, () => save('session-plan.json', draft)],
    [words.actions.saveGym, () => save('gym.json', getAt(draft, ['gym']) ?? {})],
    [words.actions.open, () => input.current?.click()],
  ] as const;
  return (
    <div class="files">
      <FloorLink link={link} />
      <CopyButton label={words.actions.copyLink} text={link} />
      {buttons.map(([name, onClick]) => (
        <button key={name} type="button" class="wl-button" onClick={onClick}>
          {name}
        </button>
      ))}
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        hidden
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          if (file) void open(file);
          currentTarget.value = '';
        }}
      />
      <p class="soft">{words.actions.says}</p>
    </div>
  );
}

/** To the floor page, with the plan as it is when the link is gone to. */
function FloorLink({ link }: Pick<FilesProps, 'link'>) {
  const carry = ({ currentTarget }: { readonly currentTarget: HTMLAnchorElement }) => {
    currentTarget.hash = new URL(link()).hash;
  };
  return (
    <a
      class="wl-button"
      href={href('/floor/')}
      onPointerDown={carry}
      onFocus={carry}
      onClick={carry}
    >
      {words.actions.floor}
    </a>
  );
}
