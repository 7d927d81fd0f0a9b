using System.CommandLine;
using System.CommandLine.Parsing;
using ComplianceApi.Configuration;
using Records.Values;
using Storage;
using Storage.Keys;
using Wire;

namespace ComplianceApi.Commands;

/// <summary>Makes keys, shows them without their secrets, and takes them out of use.</summary>
internal static class KeysCommand
{
    private const int LongestName = 100;

    public static Command Make() => new("keys", "Makes keys for those who call the service, and takes them out of use. Once there is one, the service asks for one.")
    {
        StoreOptions.Path, StoreOptions.Connection, Add(), List(), Revoke(),
    };

    private static Command Add()
    {
        var scopes = new Argument<KeyScope[]>("scope") { Description = $"What it opens, one or more of {string.Join(", ", WireNames.OfValues(typeof(KeyScope)))}.", Arity = ArgumentArity.OneOrMore, CustomParser = Scopes };
        var tenant = new Option<string>("--tenant") { Description = "Whose records it opens: 1 to 100 letters, digits, dots, dashes and underscores. local: those that were stored while no key was asked for.", DefaultValueFactory = _ => Tenant.Local.Name };
        tenant.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string>() is not { Length: > 0 and <= LongestName } name || !name.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_'))
                result.AddError("--tenant: 1 to 100 letters, digits, dots, dashes and underscores.");
        });
        var expires = new Option<DateOnly?>("--expires") { Description = "Its last day (UTC), such as 2027-03-31. Without, it works until it is revoked.", CustomParser = Day };
        var note = new Option<string>("--note") { Description = "What it is for; shown in the list.", DefaultValueFactory = _ => "" };
        var create = new Option<bool>("--create") { Description = "Make the store where there is none, for a first key before the first start. In the usual place it is made without." };
        var command = new Command("add", "Makes a key and prints it, this once. To change keys without a gap: make the new one, hand it out, then revoke the old one.") { scopes, tenant, expires, note, create };
        command.SetAction((parsed, stop) => StoreOptions.WithStoreAsync(parsed, OpeningOf(parsed, parsed.GetValue(create)), async database =>
        {
            var lastDay = parsed.GetValue(expires);
            DateTimeOffset? end = lastDay is { } day ? new DateTimeOffset(day.AddDays(1), TimeOnly.MinValue, TimeSpan.Zero) : null;
            var key = await new KeyStore(database).AddAsync(
                new Tenant(parsed.GetRequiredValue(tenant)), parsed.GetRequiredValue(scopes), parsed.GetRequiredValue(note), TimeProvider.System.GetUtcNow(), end, stop);
            parsed.InvocationConfiguration.Output.WriteLine(key);
            await parsed.InvocationConfiguration.Error.WriteLineAsync("This is the only time that the key is shown. It is sent as: Authorization: Bearer <key>");
            return 0;
        }));
        return command;
    }

    private static Command List()
    {
        var command = new Command("list", "Lists the keys: id, tenant, scopes, state, when it was made, what it is for.");
        command.SetAction((parsed, stop) => StoreOptions.ReadStoreAsync(parsed, async database =>
        {
            var now = TimeProvider.System.GetUtcNow();
            foreach (var key in await new KeyStore(database).ListAsync(stop))
                parsed.InvocationConfiguration.Output.WriteLine($"{key.Id}  {key.Tenant.Name}  {string.Join(',', key.Scopes.Select(scope => WireNames.Of(scope)))}  {StateOf(key, now)}  {key.CreatedAt:yyyy-MM-dd}  {key.Note}".TrimEnd());
            return 0;
        }));
        return command;
    }

    private static Command Revoke()
    {
        var id = new Argument<string>("id") { Description = "The part of the key before the dot, as the list shows it." };
        var command = new Command("revoke", "Takes a key out of use: within a second it opens nothing more, in browsers neither.") { id };
        command.SetAction((parsed, stop) => StoreOptions.WithStoreAsync(parsed, StoreOpening.ToUse, async database =>
        {
            if (await new KeyStore(database).RevokeAsync(KeyText.IdOf(parsed.GetRequiredValue(id)), TimeProvider.System.GetUtcNow(), stop))
                return 0;
            await parsed.InvocationConfiguration.Error.WriteLineAsync("There is no key of this id in use.");
            return 1;
        }));
        return command;
    }

    private static StoreOpening OpeningOf(ParseResult parsed, bool isToBeMade) => parsed.GetValue(StoreOptions.Connection) is null
        ? StorePlace.OpeningOf(parsed.GetValue(StoreOptions.Path), isToBeMade)
        : isToBeMade ? StoreOpening.OrMake : StoreOpening.ToUse;

    private static string StateOf(ApiKey key, DateTimeOffset now) => key switch
    {
        { RevokedAt: { } at } => $"revoked {at:yyyy-MM-dd}",
        { ExpiresAt: { } end } when end <= now => $"expired after {end.AddDays(-1):yyyy-MM-dd}",
        { ExpiresAt: { } end } => $"until {end.AddDays(-1):yyyy-MM-dd}",
        _ => "in use",
    };

    private static KeyScope[]? Scopes(ArgumentResult result)
    {
        var scopes = new List<KeyScope>();
        foreach (var name in result.Tokens.SelectMany(token => token.Value.Split(',')))
        {
            var found = Enum.GetValues<KeyScope>().Where(scope => WireNames.Of(scope) == name).ToList();
            if (found.Count == 0)
            {
                result.AddError($"'{name}' is no scope.");
                return null;
            }

            scopes.AddRange(found);
        }

        return [.. scopes.Distinct()];
    }

    private static DateOnly? Day(ArgumentResult result)
    {
        if (CalendarDay.TryParse(result.Tokens[0].Value, out var day) && day >= DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime))
            return day;

        result.AddError($"--expires: a day that is not over, such as 2027-03-31, up to the year {CalendarDay.LastYear}. A key without it works until it is revoked.");
        return null;
    }
}
