import type { Option } from '../sentence/piece.ts';

interface Props {
  label: string;
  value: string;
  options: readonly Option[];
  choose: (value: string) => void;
  refusalId?: string | undefined;
}

/** A word that opens its choices in place: a select of the page's own, as wide as its word. */
export function Choice({ label, value, options, choose, refusalId }: Props) {
  const known = options.some((option) => option.value === value);
  const shown = known ? options : [{ value, says: value }, ...options];
  return (
    <span className="wb-word">
      <span aria-hidden="true">{shown.find((option) => option.value === value)?.says}</span>
      <select
        aria-label={label}
        aria-describedby={refusalId}
        value={value}
        onChange={(event) => choose(event.target.value)}
      >
        <Options options={shown} />
      </select>
    </span>
  );
}

/** Options, gathered by their groups where they have any. */
export function Options({ options }: { options: readonly Option[] }) {
  const groups = Map.groupBy(options, (option) => option.group ?? '');
  return [...groups].map(([group, members]) =>
    group === '' ? (
      <PlainOptions key="" options={members} />
    ) : (
      <optgroup key={group} label={group}>
        <PlainOptions options={members} />
      </optgroup>
    ),
  );
}

function PlainOptions({ options }: { options: readonly Option[] }) {
  return options.map(({ value, says }) => (
    <option key={value} value={value}>
      {says}
    </option>
  ));
}
