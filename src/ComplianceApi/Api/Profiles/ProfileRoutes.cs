using System.Text.Json;
using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Microsoft.AspNetCore.Http.HttpResults;
using Records;
using Storage;
using Storage.Keys;

namespace ComplianceApi.Api.Profiles;

/// <summary>Makers' limits that the deployer keeps, by which records that name them are judged.</summary>
public static class ProfileRoutes
{
    private static readonly QueryParameter<int?> Version = Query.Whole("version", "The version; by default the latest.", 1, int.MaxValue);

    /// <summary>Maps the routes.</summary>
    public static void MapProfiles(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("/appliance-profiles").WithTags("Appliance profiles").NeverCached().Fails(ProblemKind.StoreUnavailable);
        routes.MapPut("/{profileId}", Put).WithName("saveApplianceProfile").Needs(KeyScope.Profiles).Accepts<MakerLimits>("application/json").WithMetadata(new BodyWithout("ApplianceProfileLimits", "decisionReference"), new ConditionalMetadata())
            .Fails(ProblemKind.ChangedMeanwhile, ProblemKind.UnreadableBody, ProblemKind.BodyTooLarge, ProblemKind.UnsupportedMediaType, ProblemKind.InvalidBody);
        routes.MapGet("/{profileId}", Get).WithName("getApplianceProfile").Needs(KeyScope.Read).Takes(Version).Revalidated().Fails(ProblemKind.NotFound);
    }

    /// <summary>Save a maker's limits as the next version of a profile.</summary>
    /// <remarks>
    /// The body has the members of a record's makerLimits, without decisionReference. Every save makes a new version, and none is ever
    /// changed, since evaluations name the version that they used. Records that name the profile in appliance.profileId are judged by
    /// the latest version; limits that such a record states itself go before it where they are stricter or name their source, and neither
    /// lifts a ceiling. With the header If-Match and the ETag that reading or saving it gave, nobody's newer version is passed over; with
    /// If-None-Match: * it is saved only where there is none yet.
    /// </remarks>
    /// <param name="profileId">Your own id: 1 to 100 letters, digits, dots, dashes, underscores and tildes.</param>
    private static async Task<Results<Created<ApplianceProfile>, Ok<ApplianceProfile>, ProblemResult>> Put(
        string profileId, HttpRequest request, ProfileStore profiles, Tenant tenant, Caller caller, TimeProvider clock, CancellationToken cancel)
    {
        if (!IsAllowed(profileId))
        {
            return new ProblemResult(ProblemKind.InvalidParameter, errors:
                [new() { Parameter = "profileId", Code = "unknownValue", Detail = "Expected 1 to 100 letters, digits, dots, dashes, underscores and tildes." }]);
        }

        var body = await JsonBody.ReadAsync(request, cancel);
        if (body.Problem is { } refused)
            return refused;
        if (!ProfileReader.TryRead(body.Bytes, out var limits, out var problem))
            return problem;

        int? after = null;
        if (request.Headers.IfMatch.Count > 0 || request.Headers.IfNoneMatch.Count > 0)
        {
            var latest = await profiles.FindAsync(tenant, profileId, version: null, cancel);
            if (!IsWanted(request, latest is null ? null : Bytes(latest)))
                return new ProblemResult(ProblemKind.ChangedMeanwhile);
            after = latest?.Version ?? 0;
        }

        if (await profiles.SaveAsync(tenant, profileId, limits, clock.GetUtcNow(), cancel, after, caller.Key?.Id) is not { } saved)
            return new ProblemResult(ProblemKind.ChangedMeanwhile);
        request.HttpContext.Response.Headers.ETag = Revalidation.TagOf(Bytes(saved)).ToString();
        return saved.Version == 1 ? TypedResults.Created($"/v1/appliance-profiles/{profileId}", saved) : TypedResults.Ok(saved);
    }

    /// <summary>Read a profile.</summary>
    /// <remarks>Without version the latest. A version never changes.</remarks>
    /// <param name="profileId">Its id.</param>
    private static async Task<Results<Ok<ApplianceProfile>, ProblemResult>> Get(
        string profileId, HttpRequest request, ProfileStore profiles, Tenant tenant, CancellationToken cancel) =>
        await profiles.FindAsync(tenant, profileId, Version.Of(request), cancel) is { } profile
            ? TypedResults.Ok(profile)
            : ProblemResult.NotFound("There is no such profile or version.");

    /// <summary>Is what is stored now what the caller wants to save upon?</summary>
    private static bool IsWanted(HttpRequest request, byte[]? current) =>
        (request.Headers.IfMatch.Count == 0 || Revalidation.IsMatch(request, current))
        && (request.Headers.IfNoneMatch.Count == 0 || current is null || !Revalidation.IsKnown(request, current));

    private static byte[] Bytes(ApplianceProfile profile) => JsonSerializer.SerializeToUtf8Bytes(profile, ApiJson.Wire.ApplianceProfile);

    /// <summary>What a path can carry without escapes.</summary>
    private static bool IsAllowed(string profileId) =>
        profileId.Length <= 100 && profileId.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' or '~');
}
