import { expect } from '@playwright/test';
import type { Locator, Page } from '@playwright/test';

/** How a hand works the screen: fingers, or the keyboard alone. Each act counts as one tap or keystroke group. */
export interface Hand {
  readonly acts: () => number;
  press(name: string | RegExp): Promise<void>;
  choose(label: string | RegExp): Promise<void>;
  type(label: string, value: string): Promise<void>;
  say(asks: string, option: string): Promise<void>;
  /** Types what a knob reads, and says so. */
  read(asks: string, value: string): Promise<void>;
}

/** Finger: taps where it looks. */
export function finger(page: Page): Hand {
  let acts = 0;
  return {
    acts: () => acts,
    press: async (name) => {
      acts += 1;
      await page
        .getByRole('button', { name, exact: typeof name === 'string' })
        .last()
        .click();
    },
    choose: async (label) => {
      acts += 1;
      await page.getByRole('radio', { name: label }).click();
    },
    type: async (label, value) => {
      acts += 1;
      await page.getByRole('textbox', { name: label, exact: true }).fill(value);
    },
    say: async (asks, option) => {
      acts += 1;
      await page.getByRole('group', { name: asks }).getByRole('button', { name: option }).click();
    },
    read: async (asks, value) => {
      acts += 2;
      const group = page.getByRole('group', { name: asks });
      await group.getByRole('textbox').fill(value);
      await group.getByRole('button', { name: 'That is what I read' }).click();
    },
  };
}

/** Keyboard: reaches everything by Tab, never by pointer. */
export function keyboard(page: Page): Hand {
  let acts = 0;
  const reach = async (wanted: Locator): Promise<void> => {
    const target = await wanted.elementHandle();
    for (let tabs = 0; tabs < 120; tabs += 1) {
      if (await page.evaluate((element) => document.activeElement === element, target)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error('not reached by Tab');
  };
  return {
    acts: () => acts,
    press: async (name) => {
      acts += 1;
      await reach(page.getByRole('button', { name, exact: typeof name === 'string' }).last());
      await page.keyboard.press('Enter');
    },
    choose: async (label) => {
      acts += 1;
      const wanted = page.getByRole('radio', { name: label });
      // one stop a group: the chosen one, then arrows
      const group = page.getByRole('group').filter({ has: wanted }).last();
      const checked = group.locator('input:checked');
      await reach((await checked.count()) > 0 ? checked : group.locator('input').first());
      for (let i = 0; i < 12 && !(await wanted.isChecked()); i += 1) await page.keyboard.press('ArrowDown');
      await expect(wanted).toBeChecked();
    },
    type: async (label, value) => {
      acts += 1;
      await reach(page.getByRole('textbox', { name: label, exact: true }));
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.type(value);
    },
    say: async (asks, option) => {
      acts += 1;
      await reach(page.getByRole('group', { name: asks }).getByRole('button', { name: option }));
      await page.keyboard.press('Enter');
    },
    read: async (asks, value) => {
      acts += 2;
      await reach(page.getByRole('group', { name: asks }).getByRole('textbox'));
      await page.keyboard.type(value);
      await page.keyboard.press('Enter');
    },
  };
}

/** One screen of the shortest honest path: its heading, and what a beginner does there. */
export interface Screen {
  readonly heading: string;
  readonly act: (hand: Hand) => Promise<void>;
}

const go = (hand: Hand): Promise<void> => hand.press('Continue');

/** A sterling pendant in sodium nitrate with a bench supply: the plan, with nothing but a seat needed. */
export const pendantPlan: readonly Screen[] = [
  {
    heading: 'Your workshop',
    act: async (hand) => {
      await hand.choose(/Bench supply/);
      await go(hand);
    },
  },
  {
    heading: 'What metal is the piece?',
    act: async (hand) => {
      await hand.choose(/Sterling silver/);
      await go(hand);
    },
  },
  {
    heading: 'How big is it?',
    act: async (hand) => {
      await hand.type('Width', '30');
      await hand.type('Height', '40');
      await hand.type('Thickness', '1');
      await go(hand);
    },
  },
  { heading: 'How deep should it bite?', act: go },
  {
    heading: 'How much of the face stays bare?',
    act: async (hand) => {
      await hand.choose(/As a share/);
      await hand.press('30 %');
      await go(hand);
    },
  },
  { heading: 'Which plate hangs opposite?', act: go },
  {
    heading: 'What do they hang in?',
    act: async (hand) => {
      await hand.type('Inside length', '120');
      await hand.type('Inside width', '80');
      await hand.type('Depth of liquid', '60');
      await go(hand);
    },
  },
  {
    heading: 'Which bath?',
    act: async (hand) => {
      await hand.choose(/Sodium nitrate/);
      await go(hand);
    },
  },
  { heading: 'What keeps the bath off?', act: go },
  { heading: 'Your plan', act: (hand) => hand.press('Begin at the bench') },
];

/** The same job at the bench, to the clock. */
export const pendantBench: readonly Screen[] = [
  {
    heading: 'Stop and look: before mixing',
    act: async (hand) => {
      await hand.say('Your goggles are', 'Over my eyes');
      await hand.say('Your gloves are', 'On, whole');
      await hand.say('The jar’s label says', 'Sodium nitrate');
      await hand.say('The tub is', 'Clean: empty');
      await hand.say('Under the tub there is', 'A tray');
      await hand.say('Food, flames, children and pets are', 'Not here');
      await hand.press('Go on');
    },
  },
  { heading: 'Mix, in this order', act: (hand) => hand.press('Mixed and labelled') },
  { heading: 'Let it stand', act: go },
  { heading: 'Clean it until water lies flat', act: go },
  { heading: 'Mask it', act: go },
  { heading: 'Hang, clip and set', act: go },
  {
    heading: 'Stop and look: before power',
    act: async (hand) => {
      await hand.say('On you', 'Goggles over my eyes');
      await hand.say('The gas can leave', 'Window open');
      await hand.say('The supply stands', 'Beside the tub');
      await hand.say('The resist is', 'Whole');
      await hand.read('The volts knob reads', '8');
      await hand.read('The amps knob reads', '0.3');
      await hand.say('Between piece and plate', 'Clear liquid');
      await hand.say('Last: follow the wire', 'Plus');
      await hand.press('Clock on');
    },
  },
];

/** From the first screen to the clock. */
export const pendantJob: readonly Screen[] = [...pendantPlan, ...pendantBench];

/** From the first bite to the sheet. */
export const pendantBite: readonly Screen[] = [
  { heading: 'Biting', act: (hand) => hand.press('Stop') },
  { heading: 'Is the supply off?', act: (hand) => hand.press(/Supply off/) },
  {
    heading: 'Stop and look: before lifting',
    act: async (hand) => {
      await hand.say('In your hands', 'Whole gloves on');
      await hand.say('Your goggles are still', 'Over my eyes');
      await hand.say('The first-rinse tub is', 'Filled');
      await hand.say('Flames, torch, heater near by', 'None');
      await hand.press('Go on');
    },
  },
  { heading: 'Deep enough?', act: (hand) => hand.press('Deep enough') },
  { heading: 'Rinse, strip, dry', act: go },
  { heading: 'What did you get?', act: go },
  {
    heading: 'Stop and look: before storing',
    act: async (hand) => {
      await hand.say('The bath smells of', 'Nothing');
      await hand.say('On plate and walls you see', 'Grey moss');
      await hand.say('The jar’s label names', 'This bath');
      await hand.say('The jar once held', 'No food');
      await hand.press('Go on');
    },
  },
  {
    heading: 'Keep the bath, or hand it over?',
    act: async (hand) => {
      await hand.choose(/Keep it/);
      await go(hand);
    },
  },
];

export const atHeading = async (page: Page, heading: string): Promise<void> => {
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(heading);
};

/** Walks screens in order; `at` looks at each before anything is done on it. */
export async function walk(
  page: Page,
  hand: Hand,
  screens: readonly Screen[],
  at: (screen: Screen) => Promise<void> = () => Promise.resolve(),
): Promise<void> {
  for (const screen of screens) {
    await atHeading(page, screen.heading);
    await at(screen);
    await screen.act(hand);
  }
}

/** Starts a job from the start page, as anybody would. */
export async function startJob(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start a job' }).click();
  await atHeading(page, 'Your workshop');
}
