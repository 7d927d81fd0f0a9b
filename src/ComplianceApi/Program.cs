using ComplianceApi;
using Microsoft.AspNetCore.Connections;

try
{
    if (await CommandLine.RunAsync(args) is { } exitCode)
        return exitCode;

    await using var service = Service.Build(args);
    await service.RunAsync();
    return 0;
}
catch (Exception refusal) when (refusal is StartRefusedException or IOException { InnerException: AddressInUseException })
{
    await Console.Error.WriteLineAsync(refusal.Message);
    return 1;
}
