import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { words } from '../words.ts';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  /** What the button says that closes it. */
  readonly close?: string;
  readonly children: ComponentChildren;
}

/** Something that lies over the session for a moment; Escape puts it away. */
export function Dialog({ title, onClose, close = words.menu.close, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => {
    const opener = document.activeElement;
    dialog.current?.showModal();
    return () => {
      if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
    };
  }, []);
  return (
    <dialog
      class="floor-dialog"
      aria-labelledby="floor-dialog-title"
      ref={dialog}
      onClose={onClose}
    >
      <h2 id="floor-dialog-title" tabIndex={-1}>
        {title}
      </h2>
      {children}
      <button type="button" class="wl-button floor-close" onClick={() => dialog.current?.close()}>
        {close}
      </button>
    </dialog>
  );
}
