import type { Planned } from '../../planner/state/planFrom.ts';
import { fetchDesk } from '../later.ts';
import { words } from '../words.ts';
import { Dialog } from './Dialog.tsx';
import type { DialogName } from './DialogContext.ts';
import { useFloor, useStep } from './FloorContext.ts';
import { CarryOnDialog, LoadDialog } from './later.ts';
import { MenuDialog } from './MenuDialog.tsx';
import { PutRightDialog } from './PutRightDialog.tsx';
import { SettingsDialog } from './SettingsDialog.tsx';
import { SignsDialog } from './SignsDialog.tsx';

interface FloorDialogsProps {
  /** A number: the step that is put right. */
  readonly open: DialogName | number | null;
  readonly planned: Planned | null;
  readonly onOpen: (name: DialogName) => void;
  readonly onClose: () => void;
  readonly onTest: () => void;
}

/** The one thing that lies over the session, if any. */
export function FloorDialogs({ open, planned, onOpen, onClose, onTest }: FloorDialogsProps) {
  const { session, settings } = useFloor();
  const here = useStep();
  if (open === null) return null;
  if (typeof open === 'number') return <PutRightDialog step={open} onClose={onClose} />;
  switch (open) {
    case 'signs':
      return <SignsDialog onClose={onClose} />;
    case 'settings':
      return <SettingsDialog onTest={onTest} onClose={onClose} />;
    case 'menu': {
      const saveTrack = async () => {
        onClose();
        const desk = await fetchDesk();
        await desk.saveTrack(session, here?.step.lift ?? 0, settings.leadInSeconds);
      };
      return <MenuDialog onOpen={onOpen} onTrack={saveTrack} onClose={onClose} />;
    }
    case 'load':
    case 'carry-on': {
      if (!planned) {
        return (
          <Dialog title={words.menu.wait} onClose={onClose}>
            <p role="status">{words.menu.wait}</p>
          </Dialog>
        );
      }
      const Which = open === 'load' ? LoadDialog : CarryOnDialog;
      return <Which planned={planned} onClose={onClose} />;
    }
  }
}
