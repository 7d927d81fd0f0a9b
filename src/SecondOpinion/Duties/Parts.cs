using Records;

namespace SecondOpinion.Duties;

/// <summary>What a part touches by being fitted.</summary>
internal static class Parts
{
    /// <summary>Parts of the fire side.</summary>
    public static bool IsOfFireSide(PartKind? kind) => kind is PartKind.Burner or PartKind.HeatExchanger or PartKind.Fan or PartKind.Electrode or PartKind.CombustionSeal;

    /// <summary>Is the gas led through the burner's door or the fan, so that the fire side cannot be opened without a gas joint?</summary>
    public static bool HasGasInFireSide(Appliance appliance) => appliance.BurnerKind switch
    {
        BurnerKind.Premix or BurnerKind.FanToBurner => true,
        BurnerKind.Atmospheric => false,
        _ => !(appliance.Condensing == false && appliance.FlueType is FlueType.OpenFlued or FlueType.RoomSealedNatural),
    };

    public static IEnumerable<TouchedPart> Touch(ServiceRecord record, PartKind? kind)
    {
        if (kind is PartKind.Meter or PartKind.Pipework or PartKind.Regulator)
            yield return TouchedPart.Pipework;
        else if (Facts.IsOfGas(kind) || (IsOfFireSide(kind) && HasGasInFireSide(record.Appliance) && !IsStatedShut(record)))
            yield return TouchedPart.GasPath;
        if (IsOfFireSide(kind))
            yield return TouchedPart.CombustionCircuit;
        if (kind is PartKind.ControlBoard or PartKind.Fan or PartKind.Pump or PartKind.Sensor or PartKind.GasValve)
            yield return TouchedPart.Electrics;
        if (kind is PartKind.Thermocouple or PartKind.Sensor or PartKind.ControlBoard)
            yield return TouchedPart.Controls;
        if (kind is PartKind.Pump or PartKind.ExpansionVessel or PartKind.ReliefValve or PartKind.WaterPart)
            yield return TouchedPart.WaterSide;
        if (kind == PartKind.CondensateTrap)
            yield return TouchedPart.CondensatePath;
        if (kind == PartKind.FlueComponent)
            yield return TouchedPart.Flue;
    }

    /// <summary>"No gas joint was opened", which no part that carries gas bears.</summary>
    public static bool IsStatedShut(ServiceRecord record) =>
        record.Work?.NoGasJointOpened == true && record.PartsFitted?.Any(part => Facts.IsOfGas(part.Kind)) != true;
}
