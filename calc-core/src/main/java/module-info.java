/** Safe motor, pack and brake currents for small battery-electric vehicles: the physics. */
module brakewright.core {
    requires commons.math3;
    requires static org.jspecify;

    exports brakewright.spec;
    exports brakewright.assembly;
    exports brakewright.battery;
    exports brakewright.machine;
    exports brakewright.road;
    exports brakewright.powertrain;
    exports brakewright.formula;
    exports brakewright.limit;
    exports brakewright.braking;
    exports brakewright.driving;
    exports brakewright.heat;
    exports brakewright.operation;
    exports brakewright.review;
    exports brakewright.worksheet;
    exports brakewright.explain;
    exports brakewright.profile;
    exports brakewright.recording;
    exports brakewright.replay;
    exports brakewright.fitting;
    exports brakewright.live;
}
