import { fieldOf } from './structures.ts';

/** What a bone declares that others refer to. */
export interface Declared {
  /** Kind by link name. */
  links: Map<string, unknown>;
  switches: Set<string>;
}

/** What a rig document declares, gathered before it is read, so that references are checked where they stand. */
export interface Known {
  bones: ReadonlyMap<string, Declared>;
  /** Link fields that a driver writes. */
  driven: ReadonlySet<string>;
}

/** Names hold no dots, so this is one of a kind. */
const fieldKey = (bone: unknown, link: unknown, field: unknown): string => `${bone}.${link}.${field}`;

const itemsOf = (value: unknown, name: string): readonly unknown[] => {
  const items = fieldOf(value, name);
  return Array.isArray(items) ? items : [];
};

function declare(bone: unknown, { links, switches }: Declared): void {
  for (const link of itemsOf(bone, 'links')) {
    const name = fieldOf(link, 'name');
    if (typeof name === 'string') links.set(name, fieldOf(link, 'kind'));
  }
  for (const one of itemsOf(bone, 'switches')) {
    const name = fieldOf(one, 'name');
    if (typeof name === 'string') switches.add(name);
  }
}

function drivenField(driver: unknown): string {
  const output = fieldOf(driver, 'output');
  const [bone, link, field] = ['bone', 'link', 'field'].map((name) => {
    const value = fieldOf(output, name);
    return typeof value === 'string' ? value : '';
  });
  return fieldKey(bone, link, field);
}

/** Looks through any value at all, readable or not. */
export function declaredIn(rig: unknown): Known {
  const bones = new Map<string, Declared>();
  for (const bone of itemsOf(rig, 'bones')) {
    const name = fieldOf(bone, 'name');
    if (typeof name !== 'string') continue;
    const declared = bones.get(name) ?? { links: new Map(), switches: new Set() };
    declare(bone, declared);
    bones.set(name, declared);
  }
  return { bones, driven: new Set(itemsOf(rig, 'drivers').map(drivenField)) };
}

/** Whether a driver writes this field of a link; what the document holds there is then ignored. */
export const isDriven = ({ driven }: Known, bone: string, link: string, field: 'weight' | 'fraction'): boolean =>
  driven.has(fieldKey(bone, link, field));
