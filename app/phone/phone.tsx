import { memo, useEffect, useRef } from 'react';
import { candidatePath, candidatesPath, setPath } from '@/app/paths';
import type { Status } from './asked';
import { forgetAhead, useAhead } from './draw-ahead';
import { usePath } from './go';
import { LeafPath } from './leaf-path';
import { PhoneSheet } from './look/phone-sheet';
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
  const view = viewOf(pathname, search);
  const ahead = useAhead(pathname);
  useEffect(() => {
    document.title = `${titleOf(view)} · Bedplate`;
  });
  const shown = useRef(pathname);
  useEffect(() => {
    if (shown.current === pathname) return;
    shown.current = pathname;
    forgetAhead();
    // What had the focus is gone with the page before: keys and screen readers begin at the new one.
    document.getElementById('content')?.focus({ preventScroll: true });
  }, [pathname]);
  if (status.state === 'here' && status.value.about === null) return <NoPackScreen status={status.value} />;
  // The bar and the strip stay; what is under them is another.
  return (
    <PhoneSheet status={status} back={backOf(view)}>
      {(ahead === null ? [pathname] : [pathname, ahead]).map((path) => (
        <div key={path} className="leaf" hidden={path !== pathname}>
          <Leaf pathname={path} search={path === pathname ? search : ''} status={status} />
        </div>
      ))}
    </PhoneSheet>
  );
}

const viewOf = (pathname: string, search: string): View => viewAt(pathname, search) ?? { view: 'elsewhere' };

/** One page; drawn again only for what is told it, not when it comes to be seen. */
const Leaf = memo(function Leaf({
  pathname,
  search,
  status,
}: {
  pathname: string;
  search: string;
  status: Answer<Status>;
}) {
  return (
    <LeafPath value={pathname}>
      <Screen view={viewOf(pathname, search)} status={status} />
    </LeafPath>
  );
});

function Screen({ view, status }: { view: View; status: Answer<Status> }) {
  switch (view.view) {
    case 'home':
      return <HomeScreen status={status} typed={view.typed} />;
    case 'set':
      return <SetScreen status={status} tag={view.tag} />;
    case 'candidates':
      return <CandidatesScreen status={status} tag={view.tag} from={view.from} />;
    case 'candidate':
      return <CandidateScreen tag={view.tag} number={view.number} />;
    case 'job':
      return <JobScreen tag={view.tag} number={view.number} />;
    case 'swap':
      return <SwapScreen tag={view.tag} number={view.number} />;
    case 'fault':
      return <FaultScreen status={status} tag={view.tag} />;
    case 'readings':
      return <ReadingsScreen tag={view.tag} />;
    case 'motor':
      return <MotorScreen number={view.number} />;
    case 'label':
      return <LabelScreen code={view.code} />;
    case 'scan':
      return <ScanScreen />;
    case 'waiting':
      return <WaitingScreen status={status} />;
    case 'elsewhere':
      return <ElsewhereScreen />;
  }
}

/** Where the bar leads back to; nowhere: its name leads home. */
function backOf(view: View): { href: string; words: string } | undefined {
  switch (view.view) {
    case 'home':
    case 'elsewhere':
      return undefined;
    case 'candidates':
    case 'fault':
    case 'readings':
      return { href: setPath(view.tag), words: view.tag };
    case 'candidate':
      return { href: candidatesPath(view.tag), words: 'What can go in' };
    case 'job':
    case 'swap':
      return { href: candidatePath(view.tag, view.number), words: view.number };
    default:
      return { href: '/pump', words: 'Find' };
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
