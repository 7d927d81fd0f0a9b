using ComplianceApi;

if (await CommandLine.RunAsync(args) is { } exitCode)
    return exitCode;

try
{
    await using var service = Service.Build(args);
    await service.RunAsync();
    return 0;
}
catch (StartRefusedException refusal)
{
    await Console.Error.WriteLineAsync(refusal.Message);
    return 1;
}
