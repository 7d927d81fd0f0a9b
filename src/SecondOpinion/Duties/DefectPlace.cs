using Findings;
using Records;

namespace SecondOpinion.Duties;

/// <summary>What a defect is about.</summary>
internal static class DefectPlace
{
    private static readonly HashSet<string> OfSupply = ["gasSupply", "tightnessTests", "pipework", "escape"];
    private static readonly HashSet<string> Products = ["flue", "ventilation", "ambientCo", "combustion", "premises", "burner"];

    /// <summary>The section of the record, by the subject or else by the topic.</summary>
    public static string SectionOf(Defect defect) => !string.IsNullOrEmpty(defect.Subject) ? defect.Subject.Split('/').ElementAtOrDefault(1) ?? "" : defect.Topic switch
    {
        Topics.AmbientAir => "ambientCo",
        Topics.Tightness => "tightnessTests",
        Topics.Joints => "disturbedJoints",
        Topics.GasPressure or Topics.HeatInput => "gasSupply",
        Topics.UnsafeSituation or null => "",
        var topic => topic,
    };

    /// <summary>
    /// Of this boiler: said so, not said otherwise, or about something of it, be it by a subject or by a danger that the record shows. Meter,
    /// regulator and pipes are the supply's own.
    /// </summary>
    public static bool IsOfThisBoiler(Visit visit, Defect defect)
    {
        var hasSubject = !string.IsNullOrEmpty(defect.Subject);
        return defect.Concerns switch
        {
            DefectConcern.OtherAppliance => hasSubject || visit.Shown.Any(one => Answers(defect, one)),
            DefectConcern.Supply => (hasSubject && !OfSupply.Contains(SectionOf(defect))) || visit.Shown.Any(one => !OfSupply.Contains(one.Section) && Answers(defect, one)),
            _ => true,
        };
    }

    public static bool IsDangerous(Defect defect) => defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous;

    /// <summary>
    /// Does a defect answer what is shown? By its own subject or a part of it; one without a subject by its section. What products in the room
    /// show is answered by whatever lets them out.
    /// </summary>
    public static bool Answers(Defect defect, Shown shown)
    {
        if (!string.IsNullOrEmpty(defect.Subject) && (Pages.IsWithin(defect.Subject, shown.Pointer) || Pages.IsWithin(shown.Pointer, defect.Subject)))
            return true;
        var section = SectionOf(defect);
        if (section == shown.Section && (string.IsNullOrEmpty(defect.Subject) || IsConsequence(shown) || section is "premises" or "electrical" or "tightnessTests" or "ventilation"))
            return true;
        if (section == "flue" && shown.Pointer is "/flue/visualOk" or "/flue/supportsOk")
            return true;
        if (shown.Pointer == "/flue/caseSealOk" && defect.Mechanism == DefectMechanism.ProductsNotRemoved && section is "ambientCo" or "combustion" or "disturbedJoints")
            return true;
        if (section is "escape" or "tightnessTests" or "disturbedJoints" or "pipework" && shown.Section is "tightnessTests" or "disturbedJoints")
            return true;
        return Products.Contains(section) && (IsConsequence(shown) || (section == "ventilation" && shown.Section == "premises") || (shown.Section == "premises" && section == "flue"));
    }

    /// <summary>A leak on the pipe above the valve of the boiler, which that valve does not stop.</summary>
    public static bool IsAboveTheBoiler(Visit visit, Defect defect) => SectionOf(defect) switch
    {
        "tightnessTests" or "pipework" or "escape" => true,
        "disturbedJoints" => JointAt(visit, defect)?.Place is JointPlace.MeterUnion or JointPlace.Pipework or JointPlace.IsolationValve,
        "gasSupply" => defect.Concerns == DefectConcern.Supply,
        _ => false,
    };

    private static DisturbedJoint? JointAt(Visit visit, Defect defect) =>
        defect.Subject?.Split('/') is [_, _, var place, ..] && int.TryParse(place, System.Globalization.CultureInfo.InvariantCulture, out var index) ? visit.Joints.ElementAtOrDefault(index) : null;

    /// <summary>Products where they should not be, or a flue that does not draw: the cause may lie elsewhere.</summary>
    private static bool IsConsequence(Shown shown) => shown.Section == "ambientCo"
        || shown.Pointer is "/flue/effectivenessConfirmed" or "/flue/flowTestPassed" or "/flue/spillageTestPassed" or "/combustion/airInlet";
}
