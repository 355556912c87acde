import { lawAmounts } from '../../core/facts/law.ts';
import type { RefusalId, WarningId } from '../../core/rules/index.ts';
import { plain } from './locale.ts';

/** Why a job is refused, and what to do instead. */
export const refusalTexts: Readonly<Record<RefusalId, { readonly text: string; readonly instead: string }>> =
  {
    'chromium-anode': {
      text: '{metal} holds chromium. On the + side it leaves as chromate, a poison that causes cancer.',
      instead: 'Etch silver, copper or brass. Stainless steel may hang on the − side as the plate.',
    },
    'chromium-bath': {
      text: 'This bath holds chromium, which can be chromate, a poison that causes cancer.',
      instead:
        'Do not use or treat it. Close it, label it YELLOW, DO NOT TREAT, and hand it over. Mix a new bath.',
    },
    'silver-with-ammonium': {
      text: 'Silver and {salt} can form a black crust that explodes at a touch, even wet.',
      instead:
        'Use sodium nitrate or potassium nitrate. If silver has already been in this bath, do not move, dry or treat it: keep people away and call the fire service.',
    },
    'ammonium-nitrate': {
      text: 'Ammonium nitrate is an explosives precursor, closed to the public in many countries.',
      instead: 'Use sodium nitrate or potassium nitrate for silver, table salt for copper and brass.',
    },
    'chloride-on-silver': {
      text: 'Chloride seals silver under a skin of silver chloride. The bite stops and the piece turns black in light.',
      instead: 'Use sodium nitrate, about {silverSalt} in a litre of deionised water.',
    },
    'mixed-metals': {
      text: 'This bath holds {held}. It settles on {metal} as a loose film and spoils the bite.',
      instead: 'Keep one bath for each metal group: silver; copper and brass; nickel; iron.',
    },
    'passive-metal': {
      text: '{metal} covers itself in {salt}: the current makes gas and the piece stays as it is.',
      instead: 'Use table salt, about {saltForWater} in a litre, with the window open.',
    },
    'lead-for-sale': {
      text: '{metal} holds {share} of lead. Jewellery sold in the European Union holds less than {most} in any part; other countries have similar limits.',
      instead: 'For sale take sheet brass without lead: C26000, CZ106 or CuZn30. Check your country.',
    },
    'salt-closed-to-public': {
      text: 'In {country} the public may not buy, hold or use {salt} of this strength.',
      instead:
        'For copper and brass take table salt or sodium sulfate. Ask your authority before you buy any nitrate.',
    },
    'base-plate-with-silver': {
      text: 'A {plate} plate dissolves in a silver nitrate bath: it swaps places with the silver, and loose silver bridges the gap.',
      instead: 'Hang silver opposite silver, or stainless steel on the − side.',
    },
    'unsuitable-stock': { text: '{metal} is not etched here: {why}', instead: '{way}' },
    'no-opening': {
      text: 'Nothing can leave the room you named, and every bath gives off gas that burns.',
      instead: 'Work by a window that opens, in an open garage or shed, or outdoors under a roof.',
    },
    'ten-volts': {
      text: 'The volts knob is at {volts}. At {refusedVolts} and over the resist lifts and gas takes over from the bite.',
      instead:
        'Set {planVolts} or less. Silver in sodium nitrate starts near {silverStartVolts} and works near {silverWorkVolts}.',
    },
    'unfit-supply': {
      text: 'A supply of the kind “{supply}” cannot be used: its current alternates, is not known, or has no limit.',
      instead:
        'Use a bench supply or a plug-in adapter that gives {adapterVolts} direct current and is sealed from the mains.',
    },
    'bath-too-hot': {
      text: 'The bath is at {found}. A run warms it further, and at {stop} every run is stopped.',
      instead: 'Let it cool below {most} first; room temperature is best.',
    },
    'silver-bath-worn': {
      text: 'This silver bath has passed {used} and is retired at {limit}: the current has turned nitrate into ammonia, which can form a crust with silver that explodes.',
      instead:
        'Do not switch it on again, dry it or treat it. Smell at arm’s length, close it loosely, label it, and hand it over. Mix a new bath.',
    },
    'above-solubility': {
      text: '{strength} is more than the water dissolves: {most} at this temperature.',
      instead: 'Take at most {most}. For silver, {silverStrengths} of sodium nitrate is plenty.',
    },
    'metal-without-data': {
      text: 'There are no tables for {metal}, and a guess would be worse than no plan.',
      instead: 'Etch fine silver, sterling, copper, brass, bronze, nickel silver or mild steel.',
    },
    'salt-no-bath': {
      text: '{salt} makes no bath here. {why}',
      instead:
        'Use sodium or potassium nitrate for silver; table salt, copper sulfate, sodium sulfate or a nitrate for copper and brass.',
    },
    'unfit-plate': {
      text: 'A {metal} plate cannot be used: {why}',
      instead:
        'Hang a plate of the piece’s own metal, copper, brass or stainless steel; silver or stainless steel opposite silver.',
    },
    'outside-tables': {
      text: '{found} is outside what was measured: {low} to {high}. The plan never guesses beyond its tables.',
      instead:
        'Stay between {low} and {high}. Warm a cold bath in a warm room or in warm water, never over a flame.',
    },
    'does-not-fit': {
      text: 'The parts do not fit this tub: {misfit}.',
      instead: '{way} {amount}. Or take a bigger tub.',
    },
    'too-few-volts': {
      text: '{volts} does not start the bite: this pairing needs {needed} before metal comes off.',
      instead:
        'Set at least {needed}. Silver in sodium nitrate starts near {silverStartVolts} and works near {silverWorkVolts}.',
    },
  };

/** Safety messages and notices: the hazard, its consequence, and how to avoid it. */
export const cautionTexts: Readonly<Record<WarningId, string>> = {
  'depth-over-half':
    'The bite may reach {depth} on each bare face; {thickness} sheet may keep only {left}. Plan a shallower bite, take thicker sheet, or say that you mean to go through.',
  'leaded-brass':
    '{metal} holds {share} of lead, and it goes into the bath. Gloves, no food, no sanding dust; nobody pregnant and no children near it. Its jar is lead waste. Not for sale as jewellery.',
  'nickel-skin':
    '{metal} holds nickel: bath, dust and the etched face can bring on a rash for life. Gloves on, no dust, its own jar marked NICKEL. {use}',
  'marks-and-sale': '{family}',
  'stainless-plate':
    'Stainless steel on − only. Swapped clips turn it into a source of chromate. Follow both wires with a finger before you switch on. A yellow bath: switch off, keep it, touch nothing, hand it over.',
  'clips-dry':
    'A ring or a wet clip across the leads burns and sparks. Rings off, clips above the liquid, supply off before you touch them. Pacemaker or implant: ask your clinic first.',
  'eyes-and-gloves':
    'Dust and splashes of {salt} hurt eyes. Goggles, then gloves, then the jar. Gloved, touch the phone only in its bag.',
  'nitrate-tinder':
    'A towel wet with nitrate burns fiercely once dry. Rinse towels and spills into the first-rinse tub; keep flame, solvent and sawdust away.',
  'tap-water-clouds': 'Chloride in tap water clouds a silver bath and films the piece. Use deionised water.',
  'silver-sulfate-film':
    'Silver sulfate dissolves poorly and films the piece. Sodium nitrate bites far better.',
  'tin-skin':
    'Tin stays on {metal} as a grey skin in nitrate and slows the bite. Brush it off at each look, or use table salt.',
  'buying-is-watched': `Sellers of {salt} must report odd sales, and you a theft or loss within ${plain(lawAmounts.reportWithin.value)} hours. Buy little, keep it labelled and locked. Check your country.`,
  'heat-and-light': '{how}',
  'weak-resist': '{resist} is the weakest resist. Three layers, a gentle bite, and a look every few minutes.',
  'class-in-charge':
    'In a class one adult starts and stops every supply. Nobody under age mixes salts. Nobody pregnant near lead or nickel. Ask the venue and the insurer before the day.',
  'other-metal-in-bath':
    'The bath holds other metals too. Keep one jar for each metal group, or the waste collection cannot tell what it is.',
  'no-amps-limit':
    'No limit was given for the supply, and it would pass {current}. Find its label: most small ones give {smallSupply}, and wires get hot beyond that.',
  'overloads-supply':
    'At these volts the cell would take {asked}, and the supply gives {most}: it gets hot or cuts out. Hang fewer pieces at once, hang the plate further off, or use a stronger supply.',
  'bath-overheats':
    'Run in one go, the bath would pass {stop}; it warms by {rate}. Run in parts and let it cool, or use a bigger bath. Stop at {stop}.',
  'bite-slower-in-practice':
    'In practice the bite takes about {ratio} times as long as this model says: plan for that until the first look.',
  'film-limit':
    'As set, the bite runs at {density}, near the {limit} that the liquid at the metal can carry. Expect patches and a depth that cannot be predicted: {way}',
  'no-ammeter': 'Without an ammeter you can go only by time. Look early and often.',
  'volts-capped': 'The knob is at {volts}; the plan uses {cap}. Turn it down.',
  'hydrogen-lid':
    'Hydrogen rises from the plate, {hydrogen} in all. Under a closed {lid} lid it could burn after {minutes}. No lid, no flame, no sparks; open room.',
  chlorine:
    'Open window while it bites: next to no chlorine, at most {likely} in {room}. Only if the current falls away or the metal is used up does salt water give more: {limit}, the short limit, after {minutes}; {worst} at worst. Then supply off, as at any pool smell: leave, air the room.',
  'chlorine-room-unknown':
    'Open window while it bites. Only if the current falls away or the metal is used up does salt water give chlorine. Pool smell: supply off, leave, air the room.',
  'bath-warms-unread':
    'The bath may reach {end}. Feel the tub from outside, gloves on: as soon as it is warm, turn down or let it cool; hot: stop.',
  'bath-warms': 'The bath may reach {end}. Look at the thermometer: slow down at {warn}, stop at {stop}.',
  'bath-worn':
    'With this run the bath has passed {used}; retire it at {limit}. Old baths bite badly and, with nitrate, make nitrite and ammonia. Mix a new one and hand this one over.',
  'rinse-before-pickle': '{family}',
  'solvent-vapour':
    'The vapour of {remover} catches fire at a spark. Supply off and away, nothing wet with nitrate near, window open, no flame. Never on one bench with peroxide pickle: they can explode.',
  'silver-bath-ages':
    'An old silver nitrate bath makes ammonia. If it smells of ammonia, or a black crust shows: do not close, dry, shake or treat it; keep people away and call the collection or fire service.',
  'never-mix': '{family}',
  'out-of-reach':
    'Baths look like drinks. Never in a food or drink container; labelled; locked away from children and pets.',
  'nothing-down-drain':
    'Bath, first rinse and sludge hold metal. None of it goes down a sink, toilet or gully; diluting does not help. Keep it for the next job or hand it over.',
};
