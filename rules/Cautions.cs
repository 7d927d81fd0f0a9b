namespace Rules;

/// <summary>Cautions that several rules share.</summary>
public static class Cautions
{
    public const string CarbonMonoxide =
        "Carbon monoxide cannot be seen or smelt and kills. Do not leave the appliance in use while this stands.";

    public const string EscapingGas =
        "Escaping gas can explode. Keep flames and switches away, let air in, and shut the gas off until the joint is proved.";

    public const string LivePipework =
        "Gas pipework with a fault on it can be live and kill. Prove it dead before touching it, and leave it alone until then.";

    public const string MakerDecides = "The maker's instructions for this appliance come first.";
}
