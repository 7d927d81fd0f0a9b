using System.Security.Cryptography;
using System.Text.Json;
using Findings;
using RuleModel;
using ServiceRecords;

namespace RuleEngine;

/// <summary>The hashes by which two answers are told to be the same.</summary>
internal static class Hashes
{
    /// <summary>SHA-256 over the canonical form of the record, a line feed, and the context as written in answers.</summary>
    public static string OfInput(Visit visit)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(CanonicalForm.Write(visit.Record));
        hash.AppendData("\n"u8);
        hash.AppendData(JsonSerializer.SerializeToUtf8Bytes(visit.Lookup.ToContext(), EvaluationJson.Wire.EvaluationContext));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>
    /// SHA-256 over the whole answer as JSON, without what differs between two runs of the same judgement: ids, the caller's record id
    /// and with it the input hash, the time and the engine's version.
    /// </summary>
    public static string OfResult(Evaluation evaluation)
    {
        var judgement = evaluation with
        {
            EvaluationId = null,
            RecordId = "",
            EvaluatedAt = null,
            EngineVersion = null,
            InputHash = "",
            ResultHash = null,
            Context = evaluation.Context with { PreviousEvaluationId = null },
        };
        using var hash = SHA256.Create();
        using (var intoHash = new CryptoStream(Stream.Null, hash, CryptoStreamMode.Write))
            JsonSerializer.Serialize(intoHash, judgement, EvaluationJson.Wire.Evaluation);

        return Convert.ToHexStringLower(hash.Hash!);
    }
}
