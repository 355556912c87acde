import { describe, expect, test } from 'vitest';
import { changed } from '../../../src/lib/session/design-follows.ts';
import { blankDraft } from '../../../src/lib/session/draft.ts';
import type { Draft, FieldId } from '../../../src/lib/session/draft.ts';

const drawn: Draft = {
  ...blankDraft,
  'piece.width': '30',
  'piece.area': 'area',
  'piece.openArea': '1.2',
  'piece.design': '{"columns":1,"rows":1,"cells":"f"}',
};

describe('an area measured from a drawing', () => {
  test.each<[FieldId, string]>([
    ['piece.width', '40'],
    ['piece.shape', 'disc'],
    ['unit.length', 'in'],
  ])('is asked for anew when %s changes', (field, value) => {
    expect(changed(drawn, field, value)).toMatchObject({
      [field]: value,
      'piece.design': '',
      'piece.area': 'later',
      'piece.openArea': '',
    });
  });
  test('doubles when both faces are bitten, and halves again', () => {
    const both = changed(drawn, 'piece.faces', 'both');
    expect(both['piece.openArea']).toBe('2.4');
    expect(changed(both, 'piece.faces', 'front')['piece.openArea']).toBe('1.2');
  });
  test('stays for every other answer, and where nothing changes', () => {
    expect(changed(drawn, 'piece.depth', '0.2')).toEqual({ ...drawn, 'piece.depth': '0.2' });
    expect(changed(drawn, 'piece.width', '30')).toEqual(drawn);
  });
});

describe('what no screen asks', () => {
  const placed: Draft = {
    ...blankDraft,
    'piece.at': '40 30',
    'cathode.sideways': '12',
    'supply.control': 'amps',
  };
  test.each<[FieldId, string]>([
    ['tub.fill', '80'],
    ['tub.kind', 'jug'],
    ['piece.width', '40'],
  ])(
    'goes back to the middle when %s changes: it was placed in another tub, or for another piece',
    (field, value) => {
      expect(changed(placed, field, value)).toMatchObject({ 'piece.at': '', 'cathode.sideways': '0' });
    },
  );
  test('lets what is typed of the supply say what it can do', () => {
    expect(changed(placed, 'supply.volts', '9')).toMatchObject({
      'supply.control': 'volts',
      'piece.at': '40 30',
    });
  });
  test('stays for every other answer', () => {
    expect(changed(placed, 'bath.strength', '50')).toEqual({ ...placed, 'bath.strength': '50' });
  });
});

test.each<[FieldId, string]>([
  ['piece.faces', 'both'],
  ['hanger', 'wire'],
])('no wire is taped to a back that is bitten too, whichever is said last: %s', (field, value) => {
  const other: Partial<Draft> =
    field === 'hanger' ? { 'piece.faces': 'both', hanger: 'hole' } : { hanger: 'wire' };
  expect(changed({ ...blankDraft, ...other }, field, value).hanger).toBe('tab');
});

test('what was typed of one kind of supply does not act once another is chosen', () => {
  const adapter: Draft = {
    ...blankDraft,
    'supply.kind': 'adapter',
    'supply.volts': '12',
    'supply.maxAmps': '0.5',
    'supply.amps': 'no',
  };
  const bench = changed(adapter, 'supply.kind', 'bench');
  expect(bench).toMatchObject({
    'supply.volts': blankDraft['supply.volts'],
    'supply.maxAmps': blankDraft['supply.maxAmps'],
    'supply.amps': 'yes',
    'supply.control': 'volts',
  });
  // and none of a bench supply's usual values stands on an adapter's label
  expect(changed(bench, 'supply.kind', 'adapter')).toMatchObject({
    'supply.volts': '',
    'supply.maxAmps': '',
  });
});

test('an area typed by hand stays whatever the size', () => {
  const typed = { ...drawn, 'piece.design': '' };
  expect(changed(typed, 'piece.width', '40')).toEqual({ ...typed, 'piece.width': '40' });
});
