import { maskLines, removeLines } from './resists.ts';
import type { InstructionId } from '../../core/plan/instruction-id.ts';

/** The work instructions by id. Each starts with the verb and gives the reason in one clause. */
export const instructionTexts: Readonly<Record<InstructionId, string>> = {
  'check-metal': 'Check the metal: {metal}, bare sheet, no plating, no old or unknown solder.',
  'measure-piece': 'Measure the sheet: {thickness} thick.',
  'depth-wanted': 'Plan the bite: {depth} on average.',
  'depth-through': 'Etch right through: {depth} on average, from each bare face.',
  'attached-stones': 'Take the stones out. If one stays in, do not dip the piece.',
  'attached-glue': 'Take all glue off.',
  'attached-hinges': 'Take hinges, catches and springs off.',
  'attached-seams': 'Paint each solder seam twice: solder bites faster than sheet.',
  'fix-wire':
    'Tape a bare wire end to clean metal on the back. Mask tape and wire too, up to the liquid line.',
  'fix-hole': 'Hook it by its hole, with the piece’s own metal. Mask the hook, up to the liquid line.',
  'fix-tab': 'The tab stays on: clean its end for the clip. Mask the rest, up to the liquid line.',
  'fix-rack': 'Each piece gets its own wire, all alike. Mask the wires, up to the liquid line.',
  'hang-wire': 'Hang it by its wire.',
  'hang-hole': 'Hang it by its hook.',
  'hang-tab': 'Hold it by the tab, clip above the liquid; saw the tab off at the end.',
  'hang-rack': 'Hang each piece by its own wire from one bar.',
  'hang-piece':
    'Fix the hanger so that it holds the piece and carries the current; keep the clip above the liquid.',
  'lay-plate':
    'Lay the plate ready, {plate}, and a wire or clip for each of the two. Hang nothing until the bath is mixed and the piece is masked.',
  'weigh-piece': 'Weigh the bare piece now, before the mask: the loss tells the depth.',
  'top-up': 'Fill it up to its line with water. No salt: that is still in it.',
  'plate-opposite': 'Hang the plate, {plate}, exactly opposite the piece, {gap} away, level with it.',
  'meter-clips':
    'Goggles on. Before the clips touch any metal: clips apart, away from the tub, supply in, the meter at DC volts, its red tip on the clip meant for the piece, black on the other. No minus sign: it is plus. Supply out again.',
  'meter-clips-low':
    'Goggles on. Before the clips touch any metal: clips apart, away from the tub, volts knob low, supply on, the meter at DC volts, its red tip on the clip meant for the piece, black on the other. No minus sign: it is plus. Supply off again.',
  'adapter-ends':
    'An adapter’s plug has no clips. Do not cut its cable: push the plug into a screw terminal marked + and −, and clip the wires there. The sign on the label shows whether the tip of the plug is + or −: check it against the screws.',
  'piece-on-plus': 'Piece clip on plus. Say it aloud and look.',
  'plate-on-minus': 'Plate clip on minus.',
  tray: 'Put a tray under everything.',
  'pour-water': 'Pour {water} of {kind} into the tub. With the parts hung it reaches your line.',
  'pour-jug': 'Pour {water} of {kind} by the jug.',
  dress: 'Goggles on, gloves on, apron on. Salt comes after.',
  'weigh-salt': 'Weigh {mass} of {salt}.',
  'whole-salt': 'Take {mass} of {salt}: whole packets whose label says how much is in them.',
  'stock-water': 'Measure {water} of {kind} into a large jug that will never hold food again.',
  'stir-salt': 'Add the salt to the water and stir with plastic. No kitchen spoon.',
  'stock-pour': 'Pour {volume} of it into the tub, to your line. Keep the rest in a closed jar.',
  'label-both': 'Label the tub and the jar now.',
  'label-tub': 'Label the tub now, before the salt goes in.',
  'let-stand': 'Let it stand {hours} at least, better a night, until no grain is left.',
  'take-bath': 'Take the bath {record} from the shelf and pour it into the tub.',
  degrease: 'Degrease the piece: fine abrasive under water, then no fingers on the metal.',
  'water-break': 'Run water over it: an unbroken film is clean; beads mean grease.',
  ...maskLines,
  'stop-out-back': 'Stop out the back, the edges, the seams and the hanger.',
  'stop-out-edges': 'Stop out the edges, the seams and the hanger.',
  'thinnest-line': 'Check the artwork: a resist line thinner than {line} will not last this depth.',
  'set-amps':
    'Set the amps knob to {amps}, the volts knob to {ceiling} as a ceiling. The display will show about {display}.',
  'stop-at-charge': 'Stop at {charge}: about {minutes} with current on.',
  'set-volts': 'Set {volts}.',
  'has-volts': 'Your supply gives {volts} by itself: there is nothing to set.',
  'stop-at-time': 'Stop after {minutes} with current on, and look before that.',
  'would-set-amps':
    'All of this is for the supply as you set it. The plan itself would hold {amps}, with {ceiling} as a ceiling.',
  'would-set-volts': 'All of this is for the supply as you set it. The plan itself would set {volts}.',
  'batch-hangs':
    'Only {pieces} hang side by side in this tub, so these figures are rough. Set the number of pieces to {pieces}, plan again, and bite {lots} lots.',
  'jug-as-cube':
    'A jug has no known walls: the plan takes a cube of {side}. Give the tub’s inside for a closer one.',
  'batch-lots':
    'Hang {pieces} at once, in {lots} lots: your supply gives no more. These figures are for all of them: set the number of pieces to {pieces} and plan each lot by itself.',
  'batch-swap':
    'By where it hangs, the shallowest piece gets {evenness} of the deepest. At each look swap outer and inner pieces.',
  'test-strip': 'New bath or new metal: bite a test strip of scrap first.',
  'power-check': 'Before power: piece on +, plate on −, clips dry, nothing touching, no lid, window open.',
  'switch-on': 'Switch on at the supply and write down the time.',
  'first-look': 'First look after {look}.',
  'look-off-meter': 'For every look: supply off, meter at zero, then lift.',
  'look-off-unplugged': 'For every look: supply off, its plug out, then lift.',
  'look-off-lead-off': 'For every look: a lead off the battery, then lift.',
  'watch-amps':
    'Write down amps and degrees every few minutes. Amps that jump: resist lifts. Amps that fall: film, or metal used up.',
  'watch-bath':
    'Look every few minutes: fine bubbles at the plate go on while it bites. Many at the piece: resist lifts. None: a clip has let go, or a film has grown.',
  'watch-amps-alone':
    'Write down the amps every few minutes. Amps that jump: resist lifts. Amps that fall: film, or metal used up.',
  'deep-enough': 'Deep enough? Decide while the mask is still on.',
  'supply-off-meter': 'Supply off, meter at zero. Then touch the clips.',
  'supply-off-unplugged': 'Supply off, its plug out. Then touch the clips.',
  'supply-off-lead-off': 'A lead off the battery. Then touch the clips.',
  'lift-to-first-rinse': 'Lift with tongs into the first-rinse tub. Keep that water.',
  'second-rinse': 'Move to the second still tub, then rinse under the tap.',
  'no-neutraliser': 'A neutral salt bath needs no neutraliser: water is enough.',
  'soda-wipe':
    'Rinse salt off well: chloride left in a corner goes on tarnishing. No acid, no vinegar near the bath.',
  ...removeLines,
  'adult-removes':
    'Hand the rinsed piece to the adult in charge, who takes the resist off away from the class: the remover can catch fire.',
  'dry-and-measure': 'Dry the piece, weigh it, measure the depth, take a picture.',
  'dry-and-weigh': 'Dry the piece, weigh it, take a picture: the weight lost tells the depth.',
  'dry-and-gauge': 'Dry the piece, measure the depth, take a picture.',
  'dry-and-look': 'Dry the piece, judge the depth by eye and fingernail, take a picture.',
  'settle-and-keep':
    'Let the bath settle, keep it closed but not airtight, in the {family} jar, for the next job.',
  'update-label-minutes': 'Write today’s minutes with current on and the metal on its label.',
  'update-label': 'Write today’s amp-hours and the metal on its label.',
  'hand-over': 'Done with it: hand it over untreated to your hazardous-waste collection, labelled {family}.',
  'write-down': 'Write down what happened, so that the next piece is better.',
};
