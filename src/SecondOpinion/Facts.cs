using Records;

namespace SecondOpinion;

/// <summary>What several opinions need to know of a record. A question that the record leaves open is answered with null.</summary>
internal static class Facts
{
    /// <summary>Gross over net heat input of the three gases, as the trade reckons; of a gas that nobody names, null.</summary>
    public static decimal? GrossOverNet(Fuel? fuel) => fuel switch
    {
        Fuel.NaturalGas => 1.11m,
        Fuel.Propane => 1.09m,
        Fuel.Butane => 1.08m,
        _ => null,
    };

    public static bool? IsOpenFlued(this Case one) => one.Record.Appliance.FlueType switch
    {
        null => null,
        FlueType.OpenFlued or FlueType.OpenFluedFanned => true,
        _ => false,
    };

    /// <summary>Carbon monoxide at 10 ppm or more in any sweep of the room.</summary>
    public static bool CoIsInRoom(this Case one) =>
        one.Record.AmbientCo is { BeforePpm: >= 10 } or { RunningPeakPpm: >= 10 } or { AfterPpm: >= 10 };

    /// <summary>Carbon monoxide in the room, or a flue that spills.</summary>
    public static bool ProductsAreInRoom(this Case one) => one.CoIsInRoom() || one.Record.Flue?.SpillageTestPassed == false;

    /// <summary>Nobody can use the appliance as it was left.</summary>
    public static bool IsLeftOff(this Case one) => one.Record.Appliance.StateOnLeaving is StateOnLeaving.TurnedOff or StateOnLeaving.Disconnected;

    /// <summary>After an escape the supply was shut and the emergency provider told, as regulation 37 asks. Nothing isolated is nothing shut, whatever was ticked.</summary>
    public static bool IsGasShutAndReported(this Case one) => one.Record.Escape is { GasIsolated: true, IsolatedAt: not IsolationPoint.NotIsolated, Reference: { } reference } && reference.Trim() != "";

    /// <summary>Is a defect about this place, or without a place about this topic, recorded as put right?</summary>
    public static bool IsWrittenAsRectified(this Case one, string place, string topic) => (one.Record.Defects ?? []).Any(defect =>
        defect.Action == DefectAction.Rectified && (string.IsNullOrEmpty(defect.Subject) ? defect.Topic == topic : $"{place}/".StartsWith($"{defect.Subject}/", StringComparison.Ordinal)));

    /// <summary>A part that carries gas: fitting it opens a gas joint, whatever is stated.</summary>
    public static bool IsOfGas(PartKind? kind) => kind is PartKind.GasValve or PartKind.Injector or PartKind.Regulator or PartKind.Meter or PartKind.Pipework or PartKind.GasSeal;

    /// <summary>Was a part of one of these kinds fitted?</summary>
    public static bool IsFitted(this Case one, params PartKind[] kinds) => one.Record.PartsFitted?.Any(part => part.Kind is { } kind && kinds.Contains(kind)) == true;

    /// <summary>Left off since there was no gas, by the result or by the reason why it was left off.</summary>
    public static bool IsLeftWithoutGas(this Case one) => one.IsLeftOff() && (one.Record.Work?.Result == WorkResult.GasOff || one.Record.Appliance.LeftOffBecause == LeftOffReason.NoGas);

    /// <summary>The visit says that nobody got to the boiler, or was let work on it.</summary>
    public static bool SaysNothingReached(this Case one) => one.Record.Work?.Result is WorkResult.NoAccess or WorkResult.NoAccessToAppliance or WorkResult.Refused;

    /// <summary>Is the defect of this topic, or about something of this section?</summary>
    public static bool IsOf(this Defect defect, string topic, string section) => defect.Topic == topic || (defect.Subject is { } subject && Pages.IsWithin(subject, section));

    /// <summary>At risk, and immediately dangerous where products are in the room.</summary>
    public static Opinion AtRiskOrWorse(this Case one, string subject) => one.ProductsAreInRoom() ? Say.Dangerous(subject) : Say.AtRisk(subject);

    /// <summary>Rated input of the plate, net; null where the figure or its basis is absent, or the fuel by which it is turned into net.</summary>
    public static decimal? NetInputKw(this Case one) => OnBasis(one, InputBasis.Net);

    /// <summary>Rated input of the plate, gross.</summary>
    public static decimal? GrossInputKw(this Case one) => OnBasis(one, InputBasis.Gross);

    private static decimal? OnBasis(Case one, InputBasis wanted)
    {
        var appliance = one.Record.Appliance;
        return appliance.RatedInputBasis switch
        {
            null => null,
            var basis when basis == wanted => appliance.RatedInputKw,
            InputBasis.Net => appliance.RatedInputKw * GrossOverNet(appliance.Fuel),
            _ => appliance.RatedInputKw / GrossOverNet(appliance.Fuel),
        };
    }

    /// <summary>The gravest of some opinions, all about one subject.</summary>
    public static Opinion Gravest(params IEnumerable<Opinion> opinions) =>
        opinions.MinBy(opinion => (opinion.Outcome, -(int?)opinion.Class))!;
}
