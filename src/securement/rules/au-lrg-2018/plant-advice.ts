import { holdsKind } from '../../../assembly/holds-kind.js';
import { type Check, countCheck, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { holdingBack } from '../../forces/directions.js';
import type { RatedLayout } from '../../forces/tie-downs.js';
import type { Article, TieDown } from '../../plan.js';
import { aboutPractice, adviseOnCount, usualCount } from '../../practice.js';
import { citeGuide, GUIDE } from './cite.js';

/**
 * Advice of an industry poster on plant: four chains, two pulling forward and two back, no webbing among them, booms
 * and buckets secured. None of it decides the verdict.
 */
export function adviseOnPlant(article: Article, tieDowns: readonly RatedLayout[], working: Working): Check[] {
  const { id, kind, accessories = [] } = article;
  const count = adviseOnCount(id, usualCount(article), tieDowns.length);
  if (kind !== 'machinery') return [count];
  citeGuide(working, 'plant', 'read', 'read in a page quoting an earlier edition');
  const direct = tieDowns.filter(({ layout }) => layout.tieDown.path === 'vehicle-to-cargo');
  const each = usualCount(article) / 2;
  const pulling = (heading: 'forward' | 'rearward') =>
    direct.filter(({ layout: { runs } }) => runs.some((run) => holdingBack(run, heading) > 0)).length;
  return [
    count,
    countCheck(aboutPractice('pulling-forward', 'Chains that pull it forward', id, GUIDE), each, pulling('rearward')),
    countCheck(aboutPractice('pulling-back', 'Chains that pull it back', id, GUIDE), each, pulling('forward')),
    adviseOnWebbing(
      id,
      tieDowns.map(({ layout }) => layout.tieDown),
    ),
    ...accessories.map((accessory) => {
      const about = aboutPractice('secured', 'Booms and buckets secured', accessory.id, GUIDE);
      const { lowered, locked } = accessory;
      if (lowered === true || locked === true) return metCheck(about);
      return lowered === undefined || locked === undefined
        ? undeterminedCheck(about, [note('POSITION_NOT_STATED', { accessory: accessory.id })])
        : failedCheck(about, note('NOT_SECURED', { accessory: accessory.id }));
    }),
  ];
}

function adviseOnWebbing(id: string, tieDowns: readonly TieDown[]): Check {
  const about = aboutPractice('no-webbing', 'Chain alone, no webbing', id, GUIDE);
  const webbing = tieDowns.filter(({ parts }) => parts !== undefined && holdsKind(parts, 'webbing'));
  if (webbing.length > 0) return failedCheck(about, note('WEBBING_ON_PLANT', { tieDowns: namesOf(webbing) }));
  const unknown = tieDowns.filter(({ parts }) => parts === undefined);
  return unknown.length === 0
    ? metCheck(about)
    : undeterminedCheck(about, [note('PARTS_NOT_LISTED', { tieDowns: namesOf(unknown) })]);
}

const namesOf = (tieDowns: readonly TieDown[]): string => tieDowns.map(({ id }) => id).join(', ');
