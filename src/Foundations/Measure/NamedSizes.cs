using System.Runtime.CompilerServices;
using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>All named numbers of a job, each worked out when first looked up, and only once.</summary>
/// <remarks>
/// Formulas may need each other in any order and in chains of any length. What is defined by a function may look up
/// others itself, up to <see cref="MostDepth"/> of them inside one another. Not for use by several threads at a time.
/// </remarks>
/// <param name="bare">The document's unit.</param>
/// <param name="byPieces">Finds names that nobody defined one by one (<c>box-1.right</c>); null when it does not know one.</param>
/// <param name="namesByPieces">The names that <paramref name="byPieces"/> knows, for suggestions.</param>
public sealed class NamedSizes(
    LengthUnit bare,
    Func<string, Outcome<Traced>?>? byPieces = null,
    Func<IEnumerable<string>>? namesByPieces = null
)
{
    /// <summary>How many functions may wait for each other at most: far more than a job has, and well within the stack.</summary>
    public const int MostDepth = 500;

    private readonly Dictionary<string, Source> _sources = [];
    private readonly Dictionary<string, Outcome<Traced>> _known = [];
    private readonly List<string> _underWay = [];
    private readonly HashSet<string> _isUnderWay = [];
    private int _depth;

    /// <summary>Every name that can be looked up, as far as known.</summary>
    public IEnumerable<string> Names => _sources.Keys.Concat(namesByPieces?.Invoke() ?? []).Distinct();

    /// <summary>Names a formula of any kind of number; a bare number stays a plain number.</summary>
    public NamedSizes Define(string name, Formula formula) =>
        Add(name, new(() => formula.Evaluate(Look, bare), formula.Names));

    /// <summary>Names a formula that must come to a length; a bare number takes the document's unit.</summary>
    public NamedSizes DefineLength(string name, Formula formula) =>
        Add(name, new(() => formula.EvaluateLength(Look, bare), formula.Names));

    /// <summary>Names what a function finds; it may look up other names.</summary>
    public NamedSizes Define(string name, Func<Outcome<Traced>> find) => Add(name, new(() => find(), []));

    /// <summary>Names a number there is already.</summary>
    public NamedSizes Define(string name, Traced number) => Define(name, () => number);

    /// <summary>The number of that name, or why there is none.</summary>
    /// <remarks>A refusal about the name itself has no column: whoever wrote the name knows where it stands.</remarks>
    public Outcome<Traced> Look(string name)
    {
        if (_known.TryGetValue(name, out var known))
            return known;
        if (_isUnderWay.Contains(name))
            return Circle(name);
        if (_depth >= MostDepth || !RuntimeHelpers.TryEnsureSufficientExecutionStack())
            return new Refusal(
                $"{name} needs too many sizes one inside the other; give one of them a size of its own."
            );
        _depth++;
        WorkOut(name);
        _depth--;
        return _known[name];
    }

    /// <summary>Works out what a formula needs before the formula, so that a long chain does not pile up on the stack.</summary>
    private void WorkOut(string name)
    {
        var bottom = _underWay.Count;
        Start(name);
        while (_underWay.Count > bottom)
        {
            var top = _underWay[^1];
            if (NextNeeded(top) is { } needed)
                Start(needed);
            else
                Finish(top);
        }
    }

    private string? NextNeeded(string name)
    {
        var needs = _sources.TryGetValue(name, out var source) ? source.Needs : [];
        // One that is under way closes a circle; working out the formula finds it and says so.
        return
            needs.Select(need => need.Name).FirstOrDefault(need => !_known.ContainsKey(need)) is { } needed
            && !_isUnderWay.Contains(needed)
            ? needed
            : null;
    }

    private void Start(string name)
    {
        _underWay.Add(name);
        _isUnderWay.Add(name);
    }

    private void Finish(string name)
    {
        var outcome = Find(name).Then<Traced>(number => number.Name == name ? number : number.Called(name));
        _known[name] = outcome;
        _underWay.RemoveAt(_underWay.Count - 1);
        _isUnderWay.Remove(name);
    }

    private Outcome<Traced> Find(string name) =>
        _sources.TryGetValue(name, out var source) ? source.Find() : byPieces?.Invoke(name) ?? Unknown(name);

    private NamedSizes Add(string name, Source source)
    {
        if (!_sources.TryAdd(name, source))
            throw new ArgumentException($"{name} is defined already.", nameof(name));
        return this;
    }

    private Refusal Circle(string name)
    {
        var circle = _underWay[_underWay.IndexOf(name)..];
        var links = circle.Select((from, i) => $"{from} needs {circle[(i + 1) % circle.Count]}");
        return new(
            circle.Count == 1
                ? $"{name} needs itself; give it a size of its own."
                : $"These sizes go round in a circle: {string.Join(", ", links)}. Give one of them a size of its own."
        )
        {
            Rule = "formula.cycle",
        };
    }

    private Refusal Unknown(string name)
    {
        var names = Names.ToHashSet();
        if (SplitAtMinus(name, names) is var (left, right))
            return new($"There is no \"{name}\"; to take away, put spaces round the minus sign: {left} - {right}.")
            {
                Rule = "formula.unknown-name",
            };
        return new(
            NearestName.To(name, names) is { } near
                ? $"There is no \"{name}\"; is \"{near}\" meant?"
                : $"There is no \"{name}\"; check its spelling, or define it among the named sizes."
        )
        {
            Rule = "formula.unknown-name",
        };
    }

    private static (string Left, string Right)? SplitAtMinus(string name, HashSet<string> names)
    {
        for (var at = name.IndexOf('-'); at >= 0; at = name.IndexOf('-', at + 1))
        {
            var (left, right) = (name[..at], name[(at + 1)..]);
            if (names.Contains(left) && (names.Contains(right) || right.All(char.IsAsciiDigit)))
                return (left, right);
        }
        return null;
    }

    private sealed record Source(Func<Outcome<Traced>> Find, IReadOnlyList<FormulaName> Needs);
}
