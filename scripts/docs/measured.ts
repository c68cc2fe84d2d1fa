import type { Compared, ModelErrors } from "../../test/reference/measured/compare";
import { modelErrors } from "../../test/reference/measured/compare";
import { cited, words } from "../../test/reference/measured/measurements";
import { digits, modelRows, pointRows } from "../reference/measuredTables";
import type { MarkdownPage } from "./page";
import { scatter } from "./scatter";

const fileOf = (key: string): string => `${key.toLowerCase()}.html`;

/** What was measured: a page for all models and one for each, the worst first. */
export function measuredPages(): MarkdownPage[] {
  const all = modelErrors();
  return [overview(all), ...all.map(modelPage)];
}

function overview(all: readonly ModelErrors[]): MarkdownPage {
  const linked = all.map((one) => ({
    ...one,
    model: { ...one.model, title: `[${one.model.title}](${fileOf(one.model.key)})` },
  }));
  const worst = all.flatMap(({ model, points }) => {
    const [first] = points.filter(({ isUnsafe }) => isUnsafe);
    return first ? [`- [${model.title}](${fileOf(model.key)}): ${first.what}; ${inWords(first)}.`] : [];
  });
  const text = [
    "# Predicted and measured",
    "How far each model is from what somebody measured, and on which side. Every prediction starts from the printed conditions alone; nothing was fitted to what it predicts. *Unsafe* is the side on which a verdict comes out milder than the truth. Each ratio is predicted over measured. Where a source tells no scatter, every unsafe miss counts as more than it.",
    "## The worst",
    worst.join("\n"),
    "## All models",
    modelRows(linked),
    "Few of these measurements are of bushes: they test the parts of the models, one by one. Where none was found, the model's page says where was looked. Checks by printed examples and by other methods stand in the repository's reference checks.",
  ];
  return { file: "measured/index.html", title: "Predicted and measured", text: text.join("\n\n") };
}

/** A model with its link and what was measured of it, in one line. */
export function measuredLine({ model, points, least, greatest, unsafe }: ModelErrors, folder: string): string {
  const link = `[${model.title}](${folder}${fileOf(model.key)})`;
  if (points.length === 0) return `${link}: no measurement was found`;
  return `${link}: predicted over measured ${least.toFixed(2)} to ${greatest.toFixed(2)}, ${unsafe} of ${points.length} on the unsafe side`;
}

/** "700 predicted, 3950 µm/m measured, 0.18 of it". */
const inWords = ({ ratio, predicted, measured, unit }: Compared): string =>
  `${digits(predicted)} predicted, ${digits(measured)}${unit && ` ${unit}`} measured, ${ratio.toFixed(2)} of it`;

function modelPage(one: ModelErrors): MarkdownPage {
  const { model, points } = one;
  const links = model.functions.map((id) => `[${id}](../functions/${fileOf(id)})`).join(", ");
  const text = [
    `# ${model.title}`,
    `Used by ${links}. ${model.how}`,
    ...(points.length > 0
      ? found(one)
      : ["No measurement was found that this model can be held against.", model.looked!]),
    "## What explains it",
    model.why,
    ...(points.length > 0 ? ["## Every measurement", pointRows(one)] : []),
    ...told(model.key),
    "[All models](index.html)",
  ];
  return { file: `measured/${fileOf(model.key)}`, title: model.title, text: text.join("\n\n") };
}

function found({ model, points, median, least, greatest, unsafe, beyond }: ModelErrors): string[] {
  const units = new Set(points.map(({ unit }) => unit));
  const unit = units.size === 1 ? points[0]!.unit : "each in its own unit";
  const bad = points.filter(({ isUnsafe }) => isUnsafe);
  const sum = `${points.length} measured, predicted over measured ${median.toFixed(2)} in the middle, ${least.toFixed(2)} to ${greatest.toFixed(2)}; ${unsafe || "none"} on the unsafe side, ${beyond || "none"} by more than the scatter`;
  return [
    `**${sum}.**`,
    scatter({
      id: "picture",
      title: model.title,
      text: `${sum}. On the line prediction and measurement agree.`,
      unit,
      points,
    }),
    ...(bad.length > 0
      ? ["## On the unsafe side", bad.map((point) => `- ${point.what}: ${inWords(point)}.`).join("\n")]
      : []),
  ];
}

function told(key: string): string[] {
  const own = words.filter(({ model }) => model === key);
  if (own.length === 0) return [];
  return ["## Found in words", own.map((one) => `- ${one.found} (${cited(one)}; ${one.label}).`).join("\n")];
}
