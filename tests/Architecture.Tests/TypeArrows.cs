using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Architecture.Tests;

/// <summary>
/// Which type of an assembly knows which other of it: by base, interface, member, attribute or code. What the compiler makes inside a type
/// belongs to that type. A constant leaves no trace where it is used, so an arrow that is made of constants alone is not seen.
/// </summary>
internal static class TypeArrows
{
    /// <summary>Every pair of types, the one that knows first; types outside of <paramref name="assembly"/> are left out.</summary>
    public static IReadOnlyList<(TypeDefinition From, TypeDefinition To)> Of(string assembly)
    {
        using var module = ModuleDefinition.ReadModule(assembly);
        var own = module.GetTypes().ToDictionary(type => type.FullName, StringComparer.Ordinal);
        return
        [
            .. own.Values
                .SelectMany(type => KnownTo(type).SelectMany(Parts), (type, known) => (From: Outermost(type), Known: own.GetValueOrDefault(known.FullName)))
                .Where(pair => pair.Known is not null)
                .Select(pair => (pair.From, To: Outermost(pair.Known!)))
                .Where(pair => pair.From != pair.To)
                .Distinct(),
        ];
    }

    private static TypeDefinition Outermost(TypeDefinition type) => type.DeclaringType is { } outer ? Outermost(outer) : type;

    private static IEnumerable<TypeReference?> KnownTo(TypeDefinition type) =>
    [
        type.BaseType,
        .. type.Interfaces.Select(implemented => implemented.InterfaceType),
        .. OfAttributes(type),
        .. OfGenericParameters(type),
        .. type.Fields.SelectMany(field => OfAttributes(field).Append(field.FieldType)),
        .. type.Properties.SelectMany(property => OfAttributes(property).Append(property.PropertyType)),
        .. type.Events.SelectMany(raised => OfAttributes(raised).Append(raised.EventType)),
        .. type.Methods.SelectMany(OfMethod),
    ];

    private static IEnumerable<TypeReference?> OfMethod(MethodDefinition method) =>
    [
        method.ReturnType,
        .. OfAttributes(method),
        .. OfAttributes(method.MethodReturnType),
        .. OfGenericParameters(method),
        .. method.Parameters.SelectMany(parameter => OfAttributes(parameter).Append(parameter.ParameterType)),
        .. method.HasBody ? method.Body.Variables.Select(variable => variable.VariableType) : [],
        .. method.HasBody ? method.Body.ExceptionHandlers.Select(handler => handler.CatchType) : [],
        .. method.HasBody ? method.Body.Instructions.SelectMany(OfInstruction) : [],
    ];

    private static IEnumerable<TypeReference?> OfInstruction(Instruction instruction) => instruction.Operand switch
    {
        TypeReference type => [type],
        FieldReference field => [field.DeclaringType, field.FieldType],
        GenericInstanceMethod method => [method.DeclaringType, method.ReturnType, .. method.Parameters.Select(parameter => parameter.ParameterType), .. method.GenericArguments],
        MethodReference method => [method.DeclaringType, method.ReturnType, .. method.Parameters.Select(parameter => parameter.ParameterType)],
        _ => [],
    };

    private static IEnumerable<TypeReference?> OfGenericParameters(IGenericParameterProvider generic) =>
        generic.GenericParameters.SelectMany(parameter => parameter.Constraints.Select(constraint => constraint.ConstraintType));

    private static IEnumerable<TypeReference?> OfAttributes(ICustomAttributeProvider attributed) => attributed.CustomAttributes.SelectMany(attribute =>
        attribute.ConstructorArguments.Concat(attribute.Properties.Concat(attribute.Fields).Select(named => named.Argument))
            .Select(argument => argument.Value as TypeReference)
            .Append(attribute.AttributeType));

    /// <summary>The type itself and those that it is made of: of a list of findings the list and the finding.</summary>
    private static IEnumerable<TypeReference> Parts(TypeReference? type) => type switch
    {
        null or GenericParameter => [],
        GenericInstanceType generic => [.. Parts(generic.ElementType), .. generic.GenericArguments.SelectMany(Parts)],
        TypeSpecification made => Parts(made.ElementType),
        _ => [type],
    };
}
