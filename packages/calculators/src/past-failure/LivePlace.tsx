import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { fetchRest } from '../contract/fetchRest.ts';
import type { ChainResult } from './compute.ts';
import type { LiveDialogProps } from './live/LiveDialog.tsx';
import { hasSavedSet } from './live/savedKey.ts';
import { said } from './words.ts';

interface LivePlaceProps {
  readonly result: ChainResult;
  readonly tempo: string;
}

/**
 * The way into following the set live. Empty in served markup, because nothing can be followed
 * without a script; what follows it is fetched when it is wanted. A set that was under way when
 * the page was loaded again goes on by itself.
 */
export function LivePlace({ result, tempo }: LivePlaceProps) {
  const [isAlive, setAlive] = useState(false);
  const [isOpen, setOpen] = useState(false);
  const [Dialog, setDialog] = useState<ComponentType<LiveDialogProps> | null>(null);
  const fetchDialog = async () => {
    const [{ LiveDialog }] = await Promise.all([import('./live/LiveDialog.tsx'), fetchRest?.()]);
    setDialog(() => LiveDialog);
  };
  const open = () => {
    setOpen(true);
    void fetchDialog();
  };
  useEffect(() => {
    setAlive(true);
    if (hasSavedSet()) open();
  }, []);
  return (
    <div class="wl-live-place wl-no-print" data-wakes>
      {isAlive && (
        <button type="button" class="wl-button" onPointerEnter={fetchDialog} onClick={open}>
          {isAlive && hasSavedSet() ? said.live.resume : said.live.open}
        </button>
      )}
      {isOpen && Dialog && <Dialog result={result} tempo={tempo} onClose={() => setOpen(false)} />}
    </div>
  );
}
