import { describe, expect, test } from 'vitest';
import { placesOf } from '../../../src/lib/core/facts/law.ts';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import { countryCode, countryTyped } from '../../../src/lib/session/country.ts';
import { jobFileOf } from '../../../src/lib/session/job-file.ts';
import { faultText } from '../../../src/lib/words/en/faults.ts';
import { pendantDraft } from '../../fixtures/job-at.ts';

describe('a country as it is typed', () => {
  test.each([
    ['UK', 'GB'],
    ['uk', 'GB'],
    ['England', 'GB'],
    ['Great  Britain', 'GB'],
    ['United Kingdom', 'GB'],
    ['the United Kingdom', 'GB'],
    ['U.S.A.', 'US'],
    ['U.K.', 'GB'],
    ['United States', 'US'],
    ['Deutschland', 'DE'],
    ['Germany', 'DE'],
    ['DD', 'DE'],
    ['Greece', 'GR'],
    ['EL', 'GR'],
    ['Österreich', 'AT'],
    ['osterreich', 'AT'],
    ['España', 'ES'],
    ['Denmark', 'DK'],
    ['nz', 'NZ'],
    ['Northern Ireland', 'NI'],
    ['Ireland', 'IE'],
    ['', ''],
  ])('%s is %s', (typed, code) => {
    expect(countryTyped(typed)).toBe(code);
  });

  test('brings the lines of its country', () => {
    expect(placesOf(countryCode('Deutschland'))).toContain('EU');
    expect(placesOf(countryCode('England'))).toContain('GB');
    // what names no country: the strictest reading
    expect(placesOf(countryCode('Narnia'))).toEqual(placesOf(null));
  });

  test.each(['Narnia', 'QQ', 'ZZ'])('%s is a fault that names what is expected', (typed) => {
    expect(countryCode(typed)).toBeNull();
    const parsed = parseJob(jobFileOf({ ...pendantDraft, 'place.country': typed }));
    const fault = 'faults' in parsed ? parsed.faults[0] : undefined;
    expect(fault?.path).toBe('place.country');
    expect(fault && faultText(fault, 'place.country')).toMatch(
      /^The country: found \w+, expected its name, or two letters such as NZ\.$/,
    );
  });

  test('is planned with its code', () => {
    const parsed = parseJob(jobFileOf({ ...pendantDraft, 'place.country': 'Great Britain' }));
    expect('job' in parsed && parsed.job.place.country).toBe('GB');
  });
});
