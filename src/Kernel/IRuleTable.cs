namespace Kernel;

/// <summary>Rules that are rows of one table and no classes of their own. The catalogue finds the tables of its assembly as it finds the rules.</summary>
public interface IRuleTable
{
    /// <summary>A rule for each row.</summary>
    IEnumerable<FirstPassRule> Rows { get; }
}
