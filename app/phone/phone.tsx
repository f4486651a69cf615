import { useEffect, useRef } from 'react';
import type { Status } from './asked';
import { usePath } from './go';
import { CandidateScreen } from './screens/candidate-screen';
import { CandidatesScreen } from './screens/candidates-screen';
import { ElsewhereScreen } from './screens/elsewhere-screen';
import { FaultScreen } from './screens/fault-screen';
import { HomeScreen } from './screens/home-screen';
import { JobScreen } from './screens/job-screen';
import { LabelScreen } from './screens/label-screen';
import { MotorScreen } from './screens/motor-screen';
import { NoPackScreen } from './screens/no-pack-screen';
import { ReadingsScreen } from './screens/readings-screen';
import { ScanScreen } from './screens/scan-screen';
import { SetScreen } from './screens/set-screen';
import { SwapScreen } from './screens/swap-screen';
import { WaitingScreen } from './screens/waiting-screen';
import { type Answer, useAsk } from './use-ask';
import { type View, viewAt } from './view-at';

/** The app at the pump: it shows what lies on the phone, with or without a network. */
export function Phone() {
  const { pathname, search } = usePath();
  const status = useAsk('status', {});
  const view = viewAt(pathname, search) ?? { view: 'elsewhere' };
  useEffect(() => {
    document.title = `${titleOf(view)} · Bedplate`;
  });
  const shown = useRef(pathname);
  useEffect(() => {
    // What had the focus is gone with the page before: keys and screen readers begin at the new one.
    if (shown.current !== pathname) document.getElementById('content')?.focus({ preventScroll: true });
    shown.current = pathname;
  }, [pathname]);
  if (status.state === 'here' && status.value.about === null) return <NoPackScreen status={status.value} />;
  return <Screen key={pathname} view={view} status={status} />;
}

function Screen({ view, status }: { view: View; status: Answer<Status> }) {
  switch (view.view) {
    case 'home':
      return <HomeScreen status={status} typed={view.typed} />;
    case 'set':
      return <SetScreen status={status} tag={view.tag} />;
    case 'candidates':
      return <CandidatesScreen status={status} tag={view.tag} from={view.from} />;
    case 'candidate':
      return <CandidateScreen status={status} tag={view.tag} number={view.number} />;
    case 'job':
      return <JobScreen status={status} tag={view.tag} number={view.number} />;
    case 'swap':
      return <SwapScreen status={status} tag={view.tag} number={view.number} />;
    case 'fault':
      return <FaultScreen status={status} tag={view.tag} />;
    case 'readings':
      return <ReadingsScreen status={status} tag={view.tag} />;
    case 'motor':
      return <MotorScreen status={status} number={view.number} />;
    case 'label':
      return <LabelScreen status={status} code={view.code} />;
    case 'scan':
      return <ScanScreen status={status} />;
    case 'waiting':
      return <WaitingScreen status={status} />;
    case 'elsewhere':
      return <ElsewhereScreen status={status} />;
  }
}

function titleOf(view: View): string {
  switch (view.view) {
    case 'set':
      return view.tag;
    case 'candidates':
      return `What can go in? ${view.tag}`;
    case 'candidate':
      return `${view.number} for ${view.tag}`;
    case 'swap':
      return `Record the swap, ${view.number} into ${view.tag}`;
    case 'job':
      return `Job sheet, ${view.number} into ${view.tag}`;
    case 'fault':
      return `${view.tag} has failed`;
    case 'readings':
      return `Readings, ${view.tag}`;
    case 'motor':
      return view.number;
    case 'label':
    case 'scan':
      return 'Scan';
    case 'waiting':
      return 'Waiting';
    case 'home':
    case 'elsewhere':
      return 'At the pump';
  }
}
