package brakewright.explain;

import brakewright.worksheet.Worksheet;

/** Shows how the results of the driving half came about. */
public final class Workings {

    private Workings() {}

    /**
     * Works out a result once more, step by step.
     *
     * @param sheet the worksheet
     * @param id which result
     * @return the working, or why there is no such result
     */
    public static WorkingOutcome of(Worksheet sheet, ResultId id) {
        return switch (id) {
            case TOP_SPEED -> WorkingTopSpeed.of(sheet);
            case LAUNCH -> WorkingLaunch.launch(sheet);
            case CLIMB -> WorkingLaunch.climb(sheet);
            case TIME_TO_CRUISE -> WorkingPullAway.of(sheet);
            case SAG -> WorkingSag.of(sheet);
            case RANGE -> WorkingRange.range(sheet);
            case TOWN_RANGE -> WorkingTown.of(sheet);
            case CONSUMPTION -> WorkingRange.consumption(sheet);
            case CONTINUOUS_CURRENT -> WorkingHeat.continuous(sheet);
            case PULL_TIME -> WorkingHeat.pullTime(sheet);
            case RECOVERY -> WorkingHeat.recovery(sheet);
            case PACK_WARMING -> WorkingWarming.of(sheet);
            case PACK_SHARING -> WorkingSharing.sharing(sheet);
            case JOINING -> WorkingSharing.joining(sheet);
            case FIRST_STOP_TRIP -> WorkingFirstStop.of(sheet);
            case HARD_PULL_TRIP -> WorkingHardPull.of(sheet);
            case SHORT_CIRCUIT_CURRENT -> new WorkingShortCircuit(sheet.build()).working();
        };
    }
}
