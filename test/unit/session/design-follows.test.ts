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

test('an area typed by hand stays whatever the size', () => {
  const typed = { ...drawn, 'piece.design': '' };
  expect(changed(typed, 'piece.width', '40')).toEqual({ ...typed, 'piece.width': '40' });
});
