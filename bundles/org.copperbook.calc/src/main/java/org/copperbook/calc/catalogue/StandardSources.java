package org.copperbook.calc.catalogue;

import java.util.List;

import org.copperbook.calc.core.CoreCalculations;
import org.copperbook.calc.excitation.RectifierCalculations;
import org.copperbook.calc.excitation.SeparateExcitationCalculations;
import org.copperbook.calc.fit.FitCalculations;
import org.copperbook.calc.insulation.InsulationCalculations;
import org.copperbook.calc.insulation.WithstandCalculations;
import org.copperbook.calc.money.MoneyCalculations;
import org.copperbook.calc.resistance.ConductorCalculations;
import org.copperbook.calc.resistance.HeatRunCalculations;
import org.copperbook.calc.resistance.ResistanceCalculations;
import org.copperbook.calc.runup.CurveCalculations;
import org.copperbook.calc.runup.GeneratingSetCalculations;
import org.copperbook.calc.runup.MechanicalCalculations;
import org.copperbook.calc.runup.RegulationCalculations;
import org.copperbook.calc.runup.SpeedCalculations;
import org.copperbook.calc.uncertainty.UncertaintyCalculations;
import org.copperbook.calc.winding.ConnectionCalculations;
import org.copperbook.calc.winding.FactorCalculations;
import org.copperbook.calc.winding.StrandCalculations;
import org.copperbook.calc.winding.capture.CaptureCalculations;
import org.copperbook.calc.winding.design.DesignCalculations;
import org.copperbook.calc.winding.design.EmfCalculations;
import org.copperbook.calc.wire.WireCalculations;

/** The contributors of the standard catalogue, in the order in which areas are shown. */
final class StandardSources {

    private StandardSources() {
    }

    static List<CalculationSource> all() {
        return List.of(
                new ResistanceCalculations(),
                new ConductorCalculations(),
                new HeatRunCalculations(),
                new UncertaintyCalculations(),
                new InsulationCalculations(),
                new WithstandCalculations(),
                new CoreCalculations(),
                new RectifierCalculations(),
                new SeparateExcitationCalculations(),
                new SpeedCalculations(),
                new GeneratingSetCalculations(),
                new CurveCalculations(),
                new RegulationCalculations(),
                new MechanicalCalculations(),
                new FitCalculations(),
                new WireCalculations(),
                new StrandCalculations(),
                new FactorCalculations(),
                new ConnectionCalculations(),
                new EmfCalculations(),
                new DesignCalculations(),
                new CaptureCalculations(),
                new MoneyCalculations(),
                new UnitCalculations());
    }
}
