import { boreIn } from "../../fit/history";
import type { Limits } from "../../fit/zones/iso286";
import type { Climate } from "./climates";
import { begunWith, jointOf } from "./states";
import type { Course } from "./states";
import { bushStrain, shaftStrain } from "./strains";

const middle = ({ least, greatest }: Limits): number => (least + greatest) / 2;
const half = ({ least, greatest }: Limits): number => (greatest - least) / 2;

/**
 * Where the clearance of most assemblies lies: half of each tolerance, joined as a root sum square. Bush and housing first join to
 * the half-width of their interference, ti = √((To/2)² + (Th/2)²), whose effect on the clearance then joins those of bore and shaft.
 */
export function bandOf(course: Course, climate: Climate): Limits {
  const { assembly } = course;
  const { ring, bore, shaft, outside, seat } = assembly;
  const likely = Math.hypot(half(outside), half(seat));
  const strain = bushStrain(assembly, climate);
  const growth = 1 + shaftStrain(assembly, climate);
  const at = (off: number): number => {
    const { interference, closed } = begunWith(assembly, middle(outside) - middle(seat) + off);
    return boreIn(ring, middle(bore) + closed, strain, jointOf(course, climate, interference)) - middle(shaft) * growth;
  };
  const [low, high] = [at(-likely), at(likely)];
  const ofBore = half(bore) * (1 + strain);
  const ofShaft = half(shaft) * growth;
  const width = Math.hypot(ofBore, ofShaft, (high - low) / 2);
  return { least: (low + high) / 2 - width, greatest: (low + high) / 2 + width };
}
