namespace Rules;

/// <summary>Ids of the tables of which nothing is shipped: a deployer fills them from a document of their own (rule-set.json lists them).</summary>
public static class DeployersTables
{
    /// <summary>The permitted drops of edition 4 of IGEM/UP/1B, by installation volume.</summary>
    public const string PermittedDropEdition4 = "permitted-drop-edition-4";
}
