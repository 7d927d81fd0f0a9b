using System.Reflection;
using Xunit;

namespace Mutation;

/// <summary>The tests of a class, each row of a theory for itself, to be run without a runner.</summary>
internal static class TestList
{
    public static IEnumerable<(string Name, Action Run)> Of(params Type[] classes) =>
        from type in classes
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        where method.GetCustomAttribute<FactAttribute>() is not null
        from row in RowsOf(method)
        select ($"{type.Name}.{method.Name}({string.Join(",", row)},)", (Action)(() => method.Invoke(Activator.CreateInstance(type), row)));

    private static IEnumerable<object?[]> RowsOf(MethodInfo method)
    {
        if (method.GetCustomAttribute<TheoryAttribute>() is null)
            return [[]];

        var inline = method.GetCustomAttributes<InlineDataAttribute>().SelectMany(data => data.GetData(method));
        var member = method.GetCustomAttributes<MemberDataAttribute>().SelectMany(data => data.GetData(method));
        return [.. inline.Concat(member).Select(row => row.Zip(method.GetParameters(), (value, parameter) => Fitted(value, parameter.ParameterType)).ToArray())];
    }

    /// <summary>Attributes cannot hold a decimal: theories give a double or a whole number for one.</summary>
    private static object? Fitted(object? value, Type type) =>
        value is IConvertible && type != value.GetType() && (Nullable.GetUnderlyingType(type) ?? type) is { IsPrimitive: true } or { FullName: "System.Decimal" }
            ? Convert.ChangeType(value, Nullable.GetUnderlyingType(type) ?? type, System.Globalization.CultureInfo.InvariantCulture)
            : value;
}
