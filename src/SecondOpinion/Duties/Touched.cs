using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>What was worked on: what the record shows, and what it states besides. A statement takes nothing away.</summary>
internal sealed class Touched
{
    private readonly Dictionary<TouchedPart, SortedSet<string>> _parts = [];

    public Touched(ServiceRecord record)
    {
        foreach (var stated in record.Work?.Touched ?? [])
            Add(stated, "/work/touched");
        foreach (var (place, part) in (record.PartsFitted ?? []).Index())
            ByPart(record, part, $"/partsFitted/{place}");
        foreach (var (place, joint) in (record.DisturbedJoints ?? []).Index())
            ByJoint(joint, $"/disturbedJoints/{place}");
        ByWorkNoted(record);
        ByDefects(record);
        ByReadings(record);
        ByKind(record);
    }

    public bool Has(TouchedPart part) => _parts.ContainsKey(part);

    public bool IsNothing => _parts.Count == 0;

    /// <summary>Nothing but readings shows that anything was.</summary>
    public bool IsOnlyByReadings => _parts.Count == 1 && _parts.Values.All(why => why.SetEquals(["/combustion/readings"]));

    /// <summary>What shows it.</summary>
    public string Why(TouchedPart part) => _parts.TryGetValue(part, out var why) ? string.Join(", ", why) : "";

    private void Add(TouchedPart part, string why) => (_parts.TryGetValue(part, out var list) ? list : _parts[part] = new(StringComparer.Ordinal)).Add(why);

    private void ByPart(ServiceRecord record, FittedPart part, string at)
    {
        foreach (var touched in Parts.Touch(record, part.Kind))
            Add(touched, at);
    }

    private void ByJoint(DisturbedJoint joint, string at)
    {
        // A nipple that was opened to read a pressure has to be shut again; nothing else was worked on.
        if (JointsOpinions.CarriesGas(joint) && joint.Place != JointPlace.TestNipple)
            Add(joint.Place is JointPlace.MeterUnion or JointPlace.Pipework ? TouchedPart.Pipework : TouchedPart.GasPath, at);
        switch (joint.Place)
        {
            case JointPlace.TopPlate or JointPlace.BurnerDoor or JointPlace.Fan or JointPlace.Electrode:
                Add(TouchedPart.CombustionCircuit, at);
                break;
            case JointPlace.FlueCollector:
                Add(TouchedPart.CombustionCircuit, at);
                Add(TouchedPart.Flue, at);
                break;
            case JointPlace.CondensateTrap:
                Add(TouchedPart.CondensatePath, at);
                break;
        }
    }

    private void ByWorkNoted(ServiceRecord record)
    {
        if (record.HeatExchanger?.TopPlateRemoved == true)
            Add(TouchedPart.CombustionCircuit, "/heatExchanger/topPlateRemoved");
        if (record.HeatExchanger?.Cleaned == true)
            Add(TouchedPart.CombustionCircuit, "/heatExchanger/cleaned");
        if (record.Burner?.ElectrodeGapMm is not null)
            Add(TouchedPart.CombustionCircuit, "/burner/electrodeGapMm");
        if (record.Condensate?.TrapCleaned == true)
            Add(TouchedPart.CondensatePath, "/condensate/trapCleaned");
        if (record.Water?.FilterCleaned == true)
            Add(TouchedPart.WaterSide, "/water/filterCleaned");
        // After an escape the test shows that gas may be let in again; nothing was opened for it.
        if (record.JobType is JobType.Repair or JobType.Commissioning && record.Escape?.GasIsolated != true && record.TightnessTests?.Any(test => test.Stage == WorkStage.AfterWork) == true && !Has(TouchedPart.Pipework))
            Add(TouchedPart.GasPath, "/tightnessTests");
    }

    private void ByDefects(ServiceRecord record)
    {
        foreach (var (place, defect) in (record.Defects ?? []).Index())
        {
            if (defect.Action == DefectAction.Rectified && defect.Concerns is null or DefectConcern.ThisAppliance && OfTopic(defect.Topic) is { } part)
                Add(part, $"/defects/{place}");
        }
    }

    private static TouchedPart? OfTopic(string? topic) => topic switch
    {
        Findings.Topics.Tightness or Findings.Topics.Joints or Findings.Topics.GasPressure => TouchedPart.GasPath,
        Findings.Topics.Combustion or Findings.Topics.Burner or Findings.Topics.HeatExchanger => TouchedPart.CombustionCircuit,
        Findings.Topics.Flue => TouchedPart.Flue,
        Findings.Topics.Ventilation => TouchedPart.Ventilation,
        Findings.Topics.Water => TouchedPart.WaterSide,
        Findings.Topics.Condensate => TouchedPart.CondensatePath,
        Findings.Topics.Electrical => TouchedPart.Electrics,
        Findings.Topics.SafetyDevices => TouchedPart.Controls,
        _ => null,
    };

    /// <summary>Another reading after than before, beyond what analysers of the trade leave open: something was set.</summary>
    private void ByReadings(ServiceRecord record)
    {
        var readings = record.Combustion?.Readings ?? [];
        var isSet = readings.Where(one => one.Stage == WorkStage.BeforeWork).Any(before => readings.Any(after =>
            after.Stage == WorkStage.AfterWork && after.Rate == before.Rate && after.Rate is not null && Differ(before, after)));
        if (isSet)
            Add(TouchedPart.CombustionCircuit, "/combustion/readings");
    }

    /// <summary>Accuracy classes of analysers for maintenance, EN 50379-3 (from memory): 20 ppm or 5 % of CO, 0.3 % of CO2; two readings differ by twice as much.</summary>
    private static bool Differ(CombustionReading before, CombustionReading after) =>
        Math.Abs((before.Co2Percent - after.Co2Percent) ?? 0) > 0.6m || Math.Abs((before.CoPpm - after.CoPpm) ?? 0) > Math.Max(40, 0.1m * (before.CoPpm ?? 0));

    private void ByKind(ServiceRecord record)
    {
        switch (record.Work?.Kind)
        {
            case WorkKind.FlueRelocation:
                Add(TouchedPart.Flue, "/work/kind");
                break;
            case WorkKind.MeterWork or WorkKind.Pipework:
                Add(TouchedPart.Pipework, "/work/kind");
                break;
            case WorkKind.Reconnection:
                Add(TouchedPart.GasPath, "/work/kind");
                break;
        }
    }
}
