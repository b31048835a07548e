import type { Draft, DraftPoint, DraftProblem } from './draft';
import type { ControlRole } from './model';

interface Halt {
  name: string;
  in: ControlRole;
  out: ControlRole;
  isService: boolean;
}

/** Parc fermé is not among them: an event may begin by leaving it and end by entering it. */
const HALTS: readonly Halt[] = [
  { name: 'service', in: 'serviceIn', out: 'serviceOut', isService: true },
  { name: 'remote service', in: 'remoteServiceIn', out: 'remoteServiceOut', isService: true },
  { name: 'regroup', in: 'regroupIn', out: 'regroupOut', isService: false },
  { name: 'technical zone', in: 'technicalIn', out: 'technicalOut', isService: false },
  { name: 'tyre zone', in: 'tyreZoneIn', out: 'tyreZoneOut', isService: false },
];

/** Every service entered is left, later, and left only when entered. Other halts the same, as a warning. */
export function checkHalts(draft: Draft): DraftProblem[] {
  return HALTS.flatMap((halt) => checkHalt(draft.points, halt));
}

function checkHalt(points: readonly DraftPoint[], halt: Halt): DraftProblem[] {
  const problems: DraftProblem[] = [];
  let open: { point: DraftPoint; pointIndex: number } | null = null;
  const tellUnpaired = (pointIndex: number, code: DraftProblem['code'], message: string) =>
    problems.push({ pointIndex, key: 'location', code: halt.isService ? code : 'halt-unpaired', message });
  const tellOpen = (left: { point: DraftPoint; pointIndex: number }) =>
    tellUnpaired(
      left.pointIndex,
      'service-without-out',
      `${left.point.label} enters ${halt.name} and no control leaves it. Add the row “${halt.name} out”.`,
    );
  points.forEach((point, pointIndex) => {
    if (point.roles.includes(halt.out)) {
      if (open === null) {
        tellUnpaired(
          pointIndex,
          'service-without-in',
          `${point.label} leaves ${halt.name} without having entered it. Add the row “${halt.name} in” above it.`,
        );
      } else if (halt.isService && open.point.at !== null && point.at !== null && point.at <= open.point.at) {
        const message = `${halt.name[0]?.toUpperCase()}${halt.name.slice(1)} from ${open.point.label} to ${point.label} ends before it starts or takes no time. Correct one of the two times.`;
        problems.push({ pointIndex, key: 'due', code: 'service-ends-before-it-starts', message });
      }
      open = null;
    }
    if (point.roles.includes(halt.in)) {
      if (open !== null) tellOpen(open);
      open = { point, pointIndex };
    }
  });
  if (open !== null) tellOpen(open);
  return problems;
}
