using System.Linq.Expressions;
using System.Reflection;
using FluentValidation;

namespace ServiceRecords;

/// <summary>
/// Validates one section by what its members' attributes say, and each section in it by the validator of that type. A section whose
/// members limit each other has a validator of its own, derived from this one.
/// </summary>
/// <remarks>It must bear a record in pieces: a required member may be null or default here, and a list may hold gaps.</remarks>
/// <typeparam name="T">The type of the section.</typeparam>
public class SectionValidator<T> : AbstractValidator<T> where T : class
{
    /// <summary>Makes the rules from the attributes.</summary>
    public SectionValidator()
    {
        var members = RecordMembers.SectionOf(typeof(T)).Members;
        Action<T, ValidationContext<T>>[] checks = [.. members.Select(MemberChecks.Of<T>).OfType<Action<T, ValidationContext<T>>>()];
        RuleFor(section => section).Custom((section, context) =>
        {
            foreach (var check in checks)
            {
                check(section, context);
            }
        });

        foreach (var member in members.Where(m => m.IsSection))
        {
            (member.IsList ? AddListMethod : AddSectionMethod).MakeGenericMethod(member.ClrType).Invoke(this, [member]);
        }
    }

    private static MethodInfo AddListMethod { get; } = Own(nameof(AddList));

    private static MethodInfo AddSectionMethod { get; } = Own(nameof(AddSection));

    private static MethodInfo Own(string name) => typeof(SectionValidator<T>).GetMethod(name, BindingFlags.NonPublic | BindingFlags.Instance)!;

    private void AddList<TItem>(RecordMember member) where TItem : class =>
        RuleForEach(Reach<IEnumerable<TItem>>(member)).SetValidator(SectionValidators.New<TItem>());

    private void AddSection<TSection>(RecordMember member) where TSection : class =>
        RuleFor(Reach<TSection>(member)).SetValidator(SectionValidators.New<TSection>());

    private static Expression<Func<T, TValue>> Reach<TValue>(RecordMember member)
    {
        var section = Expression.Parameter(typeof(T));
        return Expression.Lambda<Func<T, TValue>>(Expression.Property(section, member.Property), section);
    }
}

/// <summary>Finds the validator of a section type: its own, or else the one made from attributes alone.</summary>
internal static class SectionValidators
{
    public static SectionValidator<T> New<T>() where T : class
    {
        var own = typeof(SectionValidators).Assembly.GetTypes().FirstOrDefault(t => t.BaseType == typeof(SectionValidator<T>));
        return (SectionValidator<T>)Activator.CreateInstance(own ?? typeof(SectionValidator<T>))!;
    }
}
