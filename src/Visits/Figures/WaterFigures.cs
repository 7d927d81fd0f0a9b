using Visits.Computations;

namespace Visits.Figures;

/// <summary>The sealed system: static head, expansion, vessel, flow.</summary>
internal static class WaterFigures
{
    private const string Subject = "/water";

    public static void AddTo(Worksheet sheet)
    {
        var visit = sheet.Visit;
        var system = sheet.Read(visit.Record.Water?.SystemVolumeL).Exact;
        var vessel = sheet.Read(visit.Record.Water?.VesselVolumeL).Exact;
        var fill = sheet.Read(visit.Record.Water?.ColdFillBar);
        var relief = sheet.Read(visit.Record.Water?.ReliefSettingBar).Exact;
        var margin = Given.Constant("reliefMarginPercent", visit.Limits.Find(visit.Law.ReliefMargin)?.Min);
        var hottest = Hottest(sheet);

        // Read with pressure on the water side, it is not the precharge.
        var precharge = sheet.Read(visit.Record.Water?.VesselPrechargeBar);
        if (visit.Record.Water?.VesselCheckedAtZeroPressure == false)
            precharge = precharge with { Value = null };

        sheet.Add(VesselComputations.StaticHead, Subject, [sheet.Read(visit.Record.Water?.StaticHeadM).Exact]);
        sheet.Add(VesselComputations.Expansion, Subject, [system, hottest]);
        sheet.Add(VesselComputations.VolumeNeeded, Subject, [system, hottest, fill, relief, margin]);
        sheet.Add(VesselComputations.VolumeWithReserve, Subject, [system, hottest, precharge, relief]);
        sheet.Add(VesselComputations.Acceptance, Subject, [vessel, precharge, fill, relief, margin]);
        sheet.Add(VesselComputations.FinalPressure, Subject, [vessel, precharge, fill, system, hottest]);
        sheet.Add(WaterComputations.WaterFlow, Subject,
        [
            sheet.Read(visit.Record.Appliance.RatedOutputKw).As("heatKw").Exact,
            sheet.Read(visit.Record.Water?.FlowTemperatureC), sheet.Read(visit.Record.Water?.ReturnTemperatureC),
        ]);
    }

    /// <summary>The highest flow temperature: that of the design, else the usual one; and never below the one that was read.</summary>
    private static Given Hottest(Worksheet sheet)
    {
        var visit = sheet.Visit;
        var design = sheet.Read(visit.Record.Commissioning?.DesignFlowC);
        var planned = design.Value is null ? Given.Constant("", visit.Limits.Find(sheet.Visit.Law.HighestFlowTemperature)?.Max) : design;
        var read = sheet.Read(visit.Record.Water?.FlowTemperatureC);
        var hottest = (decimal?)read.Value > (decimal?)planned.Value ? read : planned;
        return hottest.As("highestFlowC").Exact;
    }
}
