using ComplianceApi;
using ComplianceApi.Configuration;
using ComplianceApi.Hosting;
using Microsoft.AspNetCore.Connections;

try
{
    if (await CommandLine.RunAsync(args) is { } exitCode)
        return exitCode;

    await using var service = Service.Build(CommandLine.SettingsOf(args));
    await service.RunAsync();
    return 0;
}
catch (StartRefusedException refusal)
{
    await Console.Error.WriteLineAsync(refusal.Message);
    return 1;
}
catch (IOException refusal) when (refusal.InnerException is AddressInUseException)
{
    await Console.Error.WriteLineAsync($"{refusal.Message.TrimEnd('.')}. Another program listens there: end it, or take another port with --urls http://127.0.0.1:5081.");
    return 1;
}
