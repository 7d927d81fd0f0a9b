using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Facts that cannot both be true, and bad values that hold the job until somebody says what they mean.</summary>
internal static class Holds
{
    public static IEnumerable<Owed> Of(Visit visit) =>
        [.. Contradictions(visit), .. Values(visit), .. visit.Defects.Index().SelectMany(one => OfDefect(visit, one.Item, $"/defects/{one.Index}"))];

    private static IEnumerable<Owed> Contradictions(Visit visit)
    {
        var record = visit.Record;
        if (visit.HasContradictedReason)
            yield return Visit.Contradiction(DutyKind.ExamineAfterWork, "/work/notDone", "a reason beside what it says could not be done");
        if (record.Work?.NoGasJointOpened == true && (visit.Fitted.Any(part => Facts.IsOfGas(part.Kind)) || visit.Joints.Any(JointsOpinions.CarriesGas)))
            yield return Visit.Contradiction(DutyKind.ProveGasPath, "/work/noGasJointOpened", "a part or a joint that carries gas");
        if (record.Work?.Touched is [] && visit.Touched.IsOnlyByReadings)
            yield return Visit.Contradiction(DutyKind.Identify, "/work/touched", "other readings after than before: something was set");
        if (record.Water is { SystemType: WaterSystemType.OpenVented, VesselPrechargeBar: not null })
            yield return Visit.Contradiction(DutyKind.WaterCondensateElectrics, "/water/systemType", "open-vented with a precharge");
        if (visit.One.IsOpenFlued() == false && record.Flue?.SpillageTestPassed is not null)
            yield return Visit.Contradiction(DutyKind.ExamineAfterWork, "/appliance/flueType", "room-sealed with a spillage test");
        if (record.Appliance.Condensing == false && (record.Combustion?.Readings ?? []).Any(IsBelowDewPoint))
            yield return Visit.Contradiction(DutyKind.FillTrap, "/appliance/condensing", "not condensing with flue gas below its dew point");
        var isOwners = record.Premises?.Use == PremisesUse.OwnerOccupied;
        if (isOwners && (record.JobType == JobType.LandlordCheck || record.Paperwork is { LandlordName: true } or { LandlordAddress: true }))
            yield return Visit.Contradiction(DutyKind.Identify, "/premises/use", "owner-occupied with a landlord named");
        if (visit.Result == WorkResult.GasOff && record.Combustion?.Readings?.Count > 0)
            yield return Visit.Contradiction(DutyKind.Identify, "/work/result", "no gas beside a flue reading");
        if (visit.IsBrokenOff && visit.IsInUse && visit.Situation.State != DangerState.LeftByRefusal)
        {
            yield return Visit.Contradiction(DutyKind.LeftOff, "/appliance/stateOnLeaving", "broken off and left in use");
            yield return Visit.Contradiction(DutyKind.LeftOff, "/work/result", "broken off and left in use");
        }

        if (visit.Result == WorkResult.StoppedForDanger && !visit.Defects.Any(DefectPlace.IsDangerous) && !visit.IsEscape)
            yield return Visit.Contradiction(DutyKind.HandleDanger, "/defects", "stopped for a danger, and none named");
    }

    /// <summary>Below 50 degrees water of the flue gas of any of the three gases condenses (about 53 to 58 degrees at usual air; from memory).</summary>
    private static bool IsBelowDewPoint(CombustionReading reading) => reading.FlueTemperatureC < 50;

    private static IEnumerable<Owed> Values(Visit visit)
    {
        var record = visit.Record;
        if (record.Electrical?.EarthOhm is > 16 and <= 200)
            yield return visit.Must(DutyKind.WaterCondensateElectrics, "/electrical/earthOhm", false, "no path of a few ohms to the main earth");
        if (record.Electrical is { EarthOk: true, EarthOhm: > 16 })
            yield return Visit.Contradiction(DutyKind.WaterCondensateElectrics, "/electrical/earthOk", "/electrical/earthOhm");
        if (record.Flue?.CaseSealOk == false && !visit.Defects.Any(DefectPlace.IsDangerous))
            yield return visit.Must(DutyKind.ProveCombustionCircuit, "/flue/caseSealOk", false, "the case is not tight");
        if (record.Pipework is { DamageOrCorrosion: true } or { VisualOk: false } && !visit.Defects.Any(defect => DefectPlace.SectionOf(defect) is "pipework" or "tightnessTests" or ""))
            yield return visit.Must(DutyKind.MadeKnown, "/defects", null, "the pipework is damaged or corroded");
        if (record.Premises?.AlteredSinceLastVisit == true && visit.Defects.Count == 0)
            yield return visit.Must(DutyKind.ExamineAfterWork, "/premises/alteredSinceLastVisit", false, "altered, and no more");
        var rise = record.AmbientCo is { RunningPeakPpm: { } peak } air && RoomSweep.Before(air) is { } before ? peak - before : 0;
        if (rise > RoomSweep.Scatter && record.AmbientCo!.RunningPeakPpm < RoomSweep.Raised && !visit.Defects.Any(DefectPlace.IsDangerous))
            yield return visit.Must(DutyKind.RoomAir, "/ambientCo/cause", visit.Recorded("/ambientCo/cause"), "the room's air rose while the boiler ran");
        foreach (var owed in FoundAndMended(visit))
            yield return owed;
        foreach (var owed in HeatInput(visit).Concat(FlueTemperature(visit)).Concat(ActionBand(visit)).Concat(Pressure(visit)))
            yield return owed;
    }

    /// <summary>What broke a danger limit and was set right still owes a defect on record, for the owner and the reporting decision.</summary>
    private static IEnumerable<Owed> FoundAndMended(Visit visit)
    {
        var isNoted = visit.Defects.Any(defect => defect.Action == DefectAction.Rectified || DefectPlace.IsDangerous(defect));
        var isSetRight = (visit.Record.Combustion?.Readings ?? []).Any(one => CombustionOpinions.RatioOf(one) > 0.008m && ShownDangers.IsSetRight(visit, one));
        var isMended = (visit.Record.TightnessTests ?? []).Index().Any(one => Tightness.WhatTheGaugeShows(visit.One, one.Item) == Tightness.Shown.Leak && !TightProof.IsLeaking(visit, one.Index));
        if ((isSetRight || isMended) && !isNoted)
            yield return visit.Must(DutyKind.MadeKnown, "/defects", null, isMended ? "a leak was found and mended" : "a dangerous reading was set right");
    }

    private static IEnumerable<Owed> HeatInput(Visit visit)
    {
        const string Rate = "/gasSupply/rate";
        if (visit.Record.GasSupply?.Rate is not { } rate)
            yield break;
        if (Gas.IsRateTaken(visit) && Examination.DeviationPercent(visit.One) is < -15 or > 15)
            yield return visit.Must(DutyKind.ExamineAfterWork, Rate, false, "far from what the boiler is set to");
        // A rate that cannot be worked out, or held against nothing, judges nothing.
        if (Examination.MeasuredKw(visit.One, InputBasis.Gross) is null)
            yield return visit.Must(DutyKind.ExamineAfterWork, rate.Seconds is null ? $"{Rate}/seconds" : rate.CalorificValueMjPerM3 is null ? $"{Rate}/calorificValueMjPerM3" : Rate, null, Rate);
        foreach (var plate in new[] { "/appliance/ratedInputKw", "/appliance/ratedInputBasis" })
            yield return visit.Must(DutyKind.ExamineAfterWork, plate, visit.Recorded(plate), Rate);
    }

    private static IEnumerable<Owed> Pressure(Visit visit)
    {
        var said = OpinionTable.All["inlet-pressure"](visit.One).First();
        if (visit.Record.GasSupply?.ApplianceInletMbar is not null && said.Outcome == Findings.Outcome.Missing)
            yield return visit.Must(DutyKind.ExamineAfterWork, "/gasSupply/rate", null, "the pressure is low");
    }

    private static IEnumerable<Owed> FlueTemperature(Visit visit)
    {
        const decimal Plastic = 120;
        var most = visit.Record.MakerLimits?.FlueTemperatureCMax ?? Plastic;
        foreach (var (place, reading) in Analysis.After(visit))
        {
            if (reading.FlueTemperatureC > most && visit.IsCondensing && visit.Record.Flue?.Material != FlueMaterial.Metal)
            {
                yield return visit.Record.Flue?.Material is null
                    ? visit.Must(DutyKind.ExamineAfterWork, "/flue/material", null, $"/combustion/readings/{place}/flueTemperatureC")
                    : visit.Must(DutyKind.ExamineAfterWork, $"/combustion/readings/{place}/flueTemperatureC", false, "too hot for a flue of plastic");
            }
        }
    }

    /// <summary>Between the limit and the ceiling after the work: read again in limit, or decided by the maker.</summary>
    private static IEnumerable<Owed> ActionBand(Visit visit)
    {
        foreach (var (place, reading) in Analysis.After(visit))
        {
            var ratio = CombustionOpinions.RatioOf(reading);
            if (ratio > CombustionOpinions.RatioLimitUnderCeiling(visit.One) && ratio <= 0.008m && !ShownDangers.IsSetRight(visit, reading)
                && visit.Record.MakerLimits?.DecisionReference is null && !visit.Defects.Any(DefectPlace.IsDangerous))
                yield return visit.Must(DutyKind.ProveCombustionCircuit, $"/combustion/readings/{place}/coPpm", false, "above the limit after the work");
        }
    }

    private static IEnumerable<Owed> OfDefect(Visit visit, Defect defect, string at)
    {
        if (defect.Class is null)
            yield return visit.Must(DutyKind.HandleDanger, $"{at}/class", null, at);
        if (defect.Class == DefectClass.Other && defect.Action != DefectAction.Rectified && defect.Mechanism is DefectMechanism.ProductsNotRemoved or DefectMechanism.GasLeak && DefectPlace.IsOfThisBoiler(visit, defect))
            yield return Visit.Contradiction(DutyKind.HandleDanger, $"{at}/class", "what comes out is no matter of standards only");
    }
}
