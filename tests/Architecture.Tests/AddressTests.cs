using System.Reflection;
using Mono.Cecil;

namespace Architecture.Tests;

/// <summary>Only the host knows under which addresses it answers.</summary>
public sealed class AddressTests
{
    private static readonly string[] Addresses = ["/v1/", "/problems/"];

    public static TheoryData<string> Projects => [.. ArrowTests.Projects.Where(project => project != "ComplianceApi")];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_text_outside_the_host_has_an_address_of_it(string project)
    {
        using var module = ModuleDefinition.ReadModule(Assembly.Load(project).Location);
        var texts = module.GetTypes().SelectMany(type => type.Methods).Where(method => method.HasBody)
            .SelectMany(method => method.Body.Instructions, (method, instruction) => (In: method.FullName, Text: instruction.Operand as string))
            .Where(found => found.Text is { } text && Array.Exists(Addresses, address => text.Contains(address, StringComparison.Ordinal)));
        Assert.Empty(texts);
    }
}
