import { words } from './words.ts';

interface NoticeProps {
  readonly message: string;
  readonly onDismiss: () => void;
}

/** Something that happened to a link or a file, until it is put away. */
export function Notice({ message, onDismiss }: NoticeProps) {
  return (
    <div class="notice" role="alert">
      <p>{message}</p>
      <button type="button" class="wl-remove" aria-label={words.notice.dismiss} onClick={onDismiss}>
        <span aria-hidden="true">×</span>
      </button>
    </div>
  );
}
