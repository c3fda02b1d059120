import { useMemo } from 'react';
import { analyse, FEW_LEARNERS, type ItemAnalysis, type Tally } from '../delivery/analysis/analyse.ts';
import type { Interval } from '../delivery/analysis/intervals.ts';
import type { Book } from '../delivery/book/book.ts';
import { DifficultyPlot } from './DifficultyPlot.tsx';
import { percent } from './words.ts';

/** How hard each exercise was, how it goes with the rest, and what went wrong most often. */
export function AnalysisSheet({ book }: { book: Book }) {
  const analysis = useMemo(() => analyse(book), [book]);
  const { items, learners, alpha, alphaInterval } = analysis;
  if (learners === 0) return <p>Nobody handed anything in.</p>;
  return (
    <>
      {analysis.isFew && (
        <p>
          <strong>With care:</strong> these are {learners} learners. Under {FEW_LEARNERS} the intervals are wide, and an
          exercise that looks easy or odd may be neither.
        </p>
      )}
      <DifficultyPlot items={items} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by key */}
      <section className="mb-wide" aria-label="Analysis of the exercises" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">exercise</th>
              <th scope="col">answered, passed</th>
              <th scope="col">mean mark</th>
              <th scope="col">with the rest</th>
            </tr>
          </thead>
          <tbody>
            {items.map((item) => (
              <tr key={item.exercise}>
                <th scope="row">{item.exercise}</th>
                <td>
                  {item.answered}, {item.passed}
                </td>
                <td>
                  {item.difficulty === null
                    ? '–'
                    : `${percent(item.difficulty)} ${between(item.difficultyInterval, percent)}`}
                </td>
                <td>{item.itemRest === null ? '–' : `${two(item.itemRest)} ${between(item.itemRestInterval, two)}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p>
        Alpha, how far the exercises measure one thing:{' '}
        {alpha === null ? 'cannot be said' : `${two(alpha)} ${between(alphaInterval, two)}`}.
      </p>
      <p className="small">
        Of the submissions that count; who handed nothing in is left out, what they left unanswered counts as nothing.
        Mean mark with Wilson’s interval; correlation with the sum of the other exercises and Fisher’s; Cronbach’s alpha
        with Bonett’s. All intervals are of 95 %.
      </p>
      {items.map((item) => (
        <Common key={item.exercise} item={item} />
      ))}
    </>
  );
}

function Common({ item }: { item: ItemAnalysis }) {
  const { exercise, requirements, wrongTurns, counterposes } = item;
  if (requirements.length === 0) return null;
  return (
    <details>
      <summary>What went wrong in {exercise}</summary>
      <Tallies title="Requirements missed" tallies={requirements} />
      <Tallies title="Wrong turns" tallies={wrongTurns} />
      <Tallies title="Counterposes" tallies={counterposes} />
    </details>
  );
}

function Tallies({ title, tallies }: { title: string; tallies: readonly Tally[] }) {
  if (tallies.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul>
        {tallies.map(({ what, learners }) => (
          <li key={what}>
            {what}: {learners} {learners === 1 ? 'learner' : 'learners'}
          </li>
        ))}
      </ul>
    </>
  );
}

const two = (value: number): string => value.toFixed(2).replace('-', '−');
const between = (interval: Interval | null, shown: (value: number) => string): string =>
  interval ? `(${shown(interval[0])} to ${shown(interval[1])})` : '';
