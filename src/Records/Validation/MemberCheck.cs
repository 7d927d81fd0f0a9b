using FluentValidation;

namespace Records.Validation;

/// <summary>What one member's attributes demand of its value.</summary>
/// <typeparam name="T">The section that has the member.</typeparam>
/// <param name="IsMet">Whether nothing is wrong with it: asked of every record, so it costs next to nothing.</param>
/// <param name="AddFaults">Names what is wrong with it: asked only where something is.</param>
internal sealed record MemberCheck<T>(Func<T, bool> IsMet, Action<T, ValidationContext<T>> AddFaults);
