import { useEffect, useMemo, useState } from 'preact/hooks';
import { AddLift } from './AddLift.tsx';
import { askedInAddress } from './askedInAddress.ts';
import { type Asking, AskingContext } from './asks/Asking.ts';
import { GymAsk } from './asks/GymAsk.tsx';
import { HealthAsk } from './asks/HealthAsk.tsx';
import { PersonAsk } from './asks/PersonAsk.tsx';
import { Code } from './Code.tsx';
import { Files } from './Files.tsx';
import { Leaf } from './Leaf.tsx';
import { LiftLeaf } from './LiftLeaf.tsx';
import { LiveLine } from './LiveLine.tsx';
import { words as laterWords } from './later/words.ts';
import { MusclesLeaf } from './MusclesLeaf.tsx';
import { Notice } from './Notice.tsx';
import { OldMark } from './OldMark.tsx';
import { CautionList } from './sheet/CautionList.tsx';
import { cautionCounts } from './sheet/cautionCounts.ts';
import { SheetHead } from './sheet/SheetHead.tsx';
import { StopList } from './sheet/StopList.tsx';
import { namesMuscles } from './state/muscleEdits.ts';
import type { Planned } from './state/planFrom.ts';
import { today } from './state/today.ts';
import { type Json, listAt } from './state/tree.ts';
import { TopBar } from './TopBar.tsx';
import { usePlanLink } from './usePlanLink.ts';
import { usePlanner } from './usePlanner.ts';
import { words } from './words.ts';

interface PlannerAppProps {
  /** The plan that the page opens with. */
  readonly start: Planned;
}

/** The whole planner: the sheet of a session, and beside each part of it what it comes from. */
export function PlannerApp({ start }: PlannerAppProps) {
  const planner = usePlanner(start);
  const { draft, shown, problems, set, change, undo, begin, canUndo } = planner;
  const [notice, setNotice] = useState<string | null>(null);
  const [isRead, setRead] = useState(false);
  const open = (opened: Json) => change(() => opened);
  const openAsked = async () => {
    const asked = askedInAddress();
    if (asked === null) return;
    try {
      const { openSaved } = await import('./saved/openSaved.ts');
      const opened = await openSaved(asked.part, asked.id, today());
      if (opened.kind === 'opened') change(opened.to);
      else setNotice(opened.says);
    } catch {
      setNotice(laterWords.fetchFailed);
    }
  };
  const link = usePlanLink({
    draft,
    onRead: () => void openAsked().then(() => setRead(true)),
    onStart: begin,
    onDraft: open,
    onUnreadable: (kind) => setNotice(words.notice[kind]),
  });
  const isSettled = isRead && (shown.draft === draft || problems.length > 0);
  useEffect(() => {
    if (isSettled) document.documentElement.classList.remove('opening');
  }, [isSettled]);
  const { gym } = shown.question;
  const asking = useMemo<Asking>(
    () => ({ draft, problems, set, change, gym }),
    [draft, problems, set, change, gym],
  );
  const { plan } = shown;
  return (
    <AskingContext.Provider value={asking}>
      <form
        class="plan"
        aria-label={words.title}
        noValidate
        data-old={problems.length > 0 ? 'true' : undefined}
        onSubmit={(event) => event.preventDefault()}
      >
        <TopBar draft={draft} canUndo={canUndo} onStart={open} onUndo={undo} link={link} />
        {notice !== null && <Notice message={notice} onDismiss={() => setNotice(null)} />}
        {problems.length > 0 && <OldMark problems={problems} />}
        <Leaf
          name={words.region.person}
          button={words.actions.change}
          brief={
            plan.kind === 'session'
              ? words.head.brief(Math.round(plan.minutes.total))
              : plan.kind === 'ask-first'
                ? words.askFirst.title
                : words.tooShort.title
          }
          sheet={useMemo(() => <SheetHead plan={plan} gymName={gym.name} />, [plan, gym])}
          asks={<PersonAsk />}
        />
        {listAt(draft, ['intent', 'lifts']).map((_, place) => (
          <LiftLeaf key={place} place={place} shown={shown} />
        ))}
        {namesMuscles(draft) && (
          <MusclesLeaf named={listAt(draft, ['intent', 'lifts']).length} shown={shown} />
        )}
        <AddLift />
        <Leaf
          name={words.region.health}
          button={words.actions.health}
          brief={words.head.cautions(cautionCounts(plan.cautions))}
          sheet={useMemo(() => <CautionList cautions={plan.cautions} />, [plan])}
          asks={<HealthAsk />}
        />
        <Leaf
          name={words.region.gym}
          button={words.actions.gym}
          brief={gym.name}
          sheet={useMemo(
            () => plan.kind === 'session' && <StopList rules={plan.stopRules} />,
            [plan],
          )}
          asks={<GymAsk />}
        />
        <Files draft={draft} link={link} onOpen={open} onNotice={setNotice} />
        <Code draft={draft} />
        <LiveLine shown={shown} />
      </form>
    </AskingContext.Provider>
  );
}
