package brakewright.cli.doubt;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.Spread;
import brakewright.buildfile.UsualSpread;
import brakewright.heat.DoubtedHeat;
import brakewright.spec.Input;

/** How well what decides the heat of the packs is known. */
public final class HeatSpreads {

    private HeatSpreads() {}

    /**
     * Reads the usual spreads of what the file does not give.
     *
     * @param file the build file
     * @return the spreads, the widest of several packs; 0 for what is given
     */
    public static DoubtedHeat.Spreads of(BuildFile file) {
        return new DoubtedHeat.Spreads(
                spread(file, Input.CELL_RESISTANCE),
                spread(file, Input.CELL_SUSTAINED_RISE),
                spread(file, Input.PACK_TO_AIR));
    }

    private static double spread(BuildFile file, Input input) {
        return file.spreads().usual().stream()
                .map(UsualSpread::spread)
                .filter(each -> each.place().input() == input)
                .mapToDouble(HeatSpreads::share)
                .max()
                .orElse(0.0);
    }

    private static double share(Spread spread) {
        return (spread.high() - spread.low()) / 2.0 / spread.nominal();
    }
}
