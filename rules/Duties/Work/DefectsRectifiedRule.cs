using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

[Id("defects-rectified"), Title("A defect that was put right shows what was worked on")]
public sealed class DefectsRectifiedRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit) =>
        from defect in visit.Defects ?? []
        where defect.Value.Action == DefectAction.Rectified && defect.Value.Concerns is null or DefectConcern.ThisAppliance
        let part = PartOf(defect.Value.Topic)
        where part is not null
        select (part.Value, defect.Pointer, $"a defect was put right");

    private static TouchedPart? PartOf(string? topic) => topic switch
    {
        Topics.Joints => TouchedPart.GasPath,
        Topics.Tightness or Topics.GasPressure => TouchedPart.Pipework,
        Topics.Combustion or Topics.Burner or Topics.HeatExchanger => TouchedPart.CombustionCircuit,
        Topics.Flue => TouchedPart.Flue,
        Topics.Ventilation => TouchedPart.Ventilation,
        Topics.Condensate => TouchedPart.CondensatePath,
        Topics.Water => TouchedPart.WaterSide,
        Topics.Electrical => TouchedPart.Electrics,
        _ => null,
    };
}
