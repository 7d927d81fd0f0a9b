namespace Rules;

/// <summary>Cautions that several rules share.</summary>
public static class Cautions
{
    public const string CarbonMonoxide =
        "Carbon monoxide cannot be seen or smelt and kills. Do not leave the appliance in use while this stands.";

    public const string EscapingGas =
        "Escaping gas can explode. Keep flames and switches away, let air in, and shut the gas off until the joint is proved.";

    public const string OutsideCompetence =
        "Gas work outside one's competence endangers the people in the building. Nobody but a competent registered engineer may go on with it.";

    public const string DangerStands =
        "A dangerous appliance can kill by fire, explosion or carbon monoxide. Nobody may use it while the danger stands.";

    public const string HotWater = "Hot water and steam under pressure scald. Let the system cool and take the pressure off before touching it.";

    public const string LivePipework =
        "Gas pipework with a fault on it can be live and kill. Prove it dead before touching it, and leave it alone until then.";

    public const string MakerDecides = "The maker's instructions for this appliance come first.";

    public const string RoomAir =
        "Carbon monoxide in a room kills those who stay in it. Let air in, get everyone out if it goes on rising, and do not wait indoors.";

    public const string ElectricShock =
        "A wrongly connected or unearthed appliance can kill by electric shock. Isolate it and prove it dead before touching it.";

    public const string UnlitGas =
        "Gas that flows unlit can explode. Shut the gas off until the device is proved.";
}
