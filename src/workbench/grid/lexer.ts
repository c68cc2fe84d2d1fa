import { LexerTreeBuilder, UniverFormulaEnginePlugin } from "@univerjs/preset-sheets-core";
import type { Injector } from "@univerjs/core";

interface LexerState {
  _resetTemp(): void;
  _squareBracketState: number;
  _tableBracketState: boolean;
}
type Preset = ReturnType<typeof import("@univerjs/preset-sheets-core").UniverSheetsCorePreset>;

/** Its members are declared private, so the compiler must be told of those that are used. */
const GridLexer = LexerTreeBuilder as unknown as new () => LexerState;

/**
 * The grid's reader of formulas also meets what is only typed, such as a heading "load [N]". It forgets everything
 * between two texts but open square brackets, so that one "[" broke every formula entered afterwards.
 */
export class ForgettingLexer extends GridLexer {
  override _resetTemp(): void {
    super._resetTemp();
    this._squareBracketState = 0;
    this._tableBracketState = false;
  }
}

class FormulaEngine extends UniverFormulaEnginePlugin {
  override onStarting(): void {
    super.onStarting();
    (this as unknown as { _injector: Injector })._injector.replace([
      LexerTreeBuilder,
      { useClass: ForgettingLexer as unknown as typeof LexerTreeBuilder },
    ]);
  }
}

/** The preset with our reader of formulas in the place of the grid's. */
export const withForgettingLexer = (preset: Preset): Preset => ({
  ...preset,
  plugins: preset.plugins.map((entry) => {
    const [plugin, config] = Array.isArray(entry) ? entry : [entry];
    return plugin.pluginName === FormulaEngine.pluginName ? [FormulaEngine, config] : entry;
  }),
});
