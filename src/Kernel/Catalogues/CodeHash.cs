using System.Security.Cryptography;
using System.Text;
using Findings;
using Wire;

namespace Kernel.Catalogues;

/// <summary>The hash that tells whether two answers were judged by the same compiled program.</summary>
internal static class CodeHash
{
    /// <summary>
    /// SHA-256 over the modules of the rules, of what runs them, of records, calculations and answers: of each, sorted by name, the name in
    /// UTF-8 and the 16 bytes of its version id. Builds are deterministic, so the id stands for all that is compiled in.
    /// </summary>
    /// <remarks>Data files beside the rules are compiled in, so what changes <see cref="LawText"/> changes this as well; a deployer's limits do not.</remarks>
    public static string Of(IEnumerable<IComplianceRule> rules, IRecordModel model)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var modules = rules.Select(rule => rule.Info.Member.Module)
            .Concat(model.Modules)
            .Concat([typeof(CodeHash).Module, typeof(Finding).Module, typeof(WireNames).Module])
            .Distinct();
        foreach (var module in modules.OrderBy(module => module.Name, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(module.Name));
            hash.AppendData(module.ModuleVersionId.ToByteArray());
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
