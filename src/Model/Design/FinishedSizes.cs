using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Which way a finished size goes to the shop's mark.</summary>
internal enum ToMark
{
    /// <summary>To the nearest: the part decides the size of its piece, and what stands next to it moves.</summary>
    Nearest,

    /// <summary>Never larger: the part goes between or onto others that are there already.</summary>
    Down,
}

/// <summary>The one place where finished sizes are rounded to the shop's mark; keeps what is left over.</summary>
/// <remarks>Default mark: 1/32 in or 0.5 mm.</remarks>
internal sealed class FinishedSizes
{
    private readonly Job _job;
    private readonly Lazy<Length> _mark;
    private readonly Dictionary<(string Panel, MatchedSide Side), Traced> _exact = [];
    private readonly List<Remainder> _remainders = [];

    public FinishedSizes(Job job)
    {
        _job = job;
        _mark = new(ReadMark);
    }

    /// <summary>The shop's smallest mark.</summary>
    public Length Mark => _mark.Value;

    /// <summary>How much a clash matters: one below the shop's mark may come of rounding alone, and is taken up when fitting.</summary>
    public Severity Gravity(Length clash) => clash < Mark ? Severity.Note : Severity.Warning;

    /// <summary>What rounding left over so far.</summary>
    public IReadOnlyList<Remainder> Remainders => _remainders;

    /// <summary>The size before rounding, where rounding changed it.</summary>
    public Traced? Exact(string panel, MatchedSide side) => _exact.GetValueOrDefault((panel, side));

    /// <summary>Names a panel's finished size: <c>box-1.bottom.length</c>.</summary>
    /// <param name="panel">The panel's id.</param>
    /// <param name="side">Its length or its width.</param>
    /// <param name="toMark">Which way it is rounded.</param>
    /// <param name="goes">Where what is left over goes, as a sentence, from the amount.</param>
    /// <param name="exact">The exact size.</param>
    public void Define(
        string panel,
        MatchedSide side,
        ToMark toMark,
        Func<Length, string> goes,
        Func<Wanted, Traced> exact
    ) =>
        _job.Names.Define(
            $"{panel}.{(side == MatchedSide.Length ? "length" : "width")}",
            wanted =>
            {
                var size = exact(wanted);
                if (wanted.Missing is not null)
                    return size;
                var finished = Rounded(size, toMark);
                return finished.Length.IsPositive
                    ? Kept(panel, side, goes, size, finished)
                    : wanted.Fail(NotPositive(panel, side, finished.Length));
            }
        );

    /// <summary>A size within a panel's outline, to the nearest mark.</summary>
    public Traced ToNearest(Traced size) => size.RoundedTo(Mark);

    private Traced Rounded(Traced size, ToMark toMark) =>
        toMark == ToMark.Nearest || size.Length.FloorTo(_mark.Value) == size.Length.RoundTo(_mark.Value)
            ? size.RoundedTo(_mark.Value)
            : Below(size).RoundedTo(_mark.Value);

    private Traced Below(Traced size)
    {
        var mark = Traced.ByRule(
            _mark.Value,
            "the shop's smallest mark; a part that goes between others is never cut larger"
        );
        return Traced.Worked(Quantity.Of(size.Length.FloorTo(_mark.Value)), "floor", size, mark);
    }

    private Traced Kept(string panel, MatchedSide side, Func<Length, string> goes, Traced size, Traced finished)
    {
        var amount = finished.Length - size.Length;
        if (amount == Length.Zero)
            return finished;
        _exact[(panel, side)] = size;
        _remainders.Add(new(panel, side, amount, goes(amount)));
        return finished;
    }

    private Refusal NotPositive(string panel, MatchedSide side, Length size) =>
        new(
            $"the {(side == MatchedSide.Length ? "length" : "width")} of {panel} comes to {_job.Print(size)}; "
                + "make its piece larger, or what takes room in it smaller.",
            $"pieces/{panel.Split('.')[0]}"
        )
        {
            Rule = "size.not-positive",
        };

    private Length ReadMark()
    {
        var usual = ShopNumbers.MarkOf(null, _job.Project.Units).Value;
        if (_job.Project.Mark is not { } text)
            return usual;
        if (_job.Names.Size("mark", text).Take(out var mark, out var refusal))
            return mark.Length;
        _job.Findings.Add(FormulaFindings.Of(refusal, ["mark"]));
        return usual;
    }
}
