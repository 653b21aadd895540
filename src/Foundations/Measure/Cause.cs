using System.Collections.Frozen;

namespace Nookwright.Measure;

/// <summary>How a <see cref="Traced"/> number was made.</summary>
public abstract record Cause
{
    private Cause() { }

    /// <summary>What it was made from, in order; empty at the ends of the chain.</summary>
    public virtual IReadOnlyList<Traced> From => [];

    internal virtual IReadOnlySet<string> AwaitedReadings() =>
        From.Select(from => from.Awaits).Aggregate((IReadOnlySet<string>)FrozenSet<string>.Empty, Both);

    /// <summary>All of both; one of the two itself where it holds the other, since most numbers wait for the same few readings.</summary>
    private static IReadOnlySet<string> Both(IReadOnlySet<string> a, IReadOnlySet<string> b)
    {
        if (ReferenceEquals(a, b) || b.IsSubsetOf(a))
            return a;
        return a.IsSubsetOf(b) ? b : a.Concat(b).ToHashSet();
    }

    /// <summary>Somebody wrote it.</summary>
    /// <param name="Text">As written.</param>
    /// <param name="Place">Where: a path in the document, a table with its source; empty for a bare count.</param>
    public sealed record Written(string Text, string Place) : Cause;

    /// <summary>Somebody read it off a tape, or will.</summary>
    /// <param name="Id">The reading's id.</param>
    /// <param name="Taken">The day, when noted.</param>
    /// <param name="IsTaken">False while it is awaited; then the number is the planned value.</param>
    /// <param name="Planned">How the planned value came about; null once the reading is taken.</param>
    public sealed record Read(string Id, DateOnly? Taken, bool IsTaken, Traced? Planned) : Cause
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Traced> From => Planned is null ? [] : [Planned];

        internal override IReadOnlySet<string> AwaitedReadings() =>
            IsTaken ? FrozenSet<string>.Empty : base.AwaitedReadings().Append(Id).ToHashSet();
    }

    /// <summary>A rule sets it.</summary>
    /// <param name="Rule">The rule as a sentence with its source.</param>
    public sealed record ByRule(string Rule) : Cause;

    /// <summary>It was worked out.</summary>
    /// <param name="Operation"><c>+</c>, <c>-</c>, <c>*</c>, <c>/</c>, or a function's name.</param>
    /// <param name="Of">What from.</param>
    public sealed record Worked(string Operation, IReadOnlyList<Traced> Of) : Cause
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Traced> From => Of;
    }

    /// <summary>It was rounded to the shop's smallest mark.</summary>
    /// <param name="Mark">The mark.</param>
    /// <param name="Of">The exact number before.</param>
    public sealed record Rounded(Length Mark, Traced Of) : Cause
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Traced> From => [Of];
    }

    /// <summary>It is another number of the job under a second name.</summary>
    /// <param name="Of">The other.</param>
    public sealed record Same(Traced Of) : Cause
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Traced> From => [Of];
    }
}
