using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Every name that formulas of a job may use, each worked out when first asked for; and every field, worked out once.</summary>
/// <param name="bare">The document's unit.</param>
internal sealed class JobNames(LengthUnit bare)
{
    private readonly NamedSizes _sizes = new(bare);
    private readonly HashSet<string> _taken = [];
    private readonly Dictionary<string, Outcome<Traced>> _fields = [];

    /// <summary>Names given twice; the first keeps the name.</summary>
    public List<string> GivenTwice { get; } = [];

    /// <summary>Names a sum over other numbers of the job.</summary>
    public void Define(string name, Func<Wanted, Traced> sum)
    {
        if (IsFree(name))
            _sizes.Define(name, () => Result(sum));
    }

    /// <summary>Names a number there is already.</summary>
    public void Define(string name, Traced number)
    {
        if (IsFree(name))
            _sizes.Define(name, number);
    }

    /// <summary>Names what a field says: any kind of number; a bare one stays a plain number.</summary>
    public void DefineWritten(string name, string field, SizeText text)
    {
        if (!IsFree(name))
            return;
        if (Formula.Read(text.Text, field).Take(out var formula, out var refusal))
            _sizes.Define(name, formula);
        else
            _sizes.Define(name, () => Unreadable(refusal));
    }

    /// <summary>The number of that name.</summary>
    public Outcome<Traced> Look(string name) => _sizes.Look(name);

    /// <summary>The length a field says.</summary>
    public Outcome<Traced> Written(string field, SizeText text)
    {
        if (!_fields.TryGetValue(field, out var outcome))
            _fields[field] = outcome = Read(field, text);
        return outcome;
    }

    /// <summary>The length a field says, which must be more than nought.</summary>
    public Outcome<Traced> Size(string field, SizeText text) =>
        Written(field, text).Then<Traced>(size => size.Length.IsPositive ? size : NotPositive(field, text, size));

    /// <summary>Everything that has a number.</summary>
    public IReadOnlyDictionary<string, Traced> All() =>
        _taken
            .Select(name => (name, outcome: Look(name)))
            .Where(named => named.outcome.Ok)
            .ToDictionary(named => named.name, named => named.outcome.Value);

    private Outcome<Traced> Result(Func<Wanted, Traced> sum)
    {
        var wanted = new Wanted(this);
        var number = sum(wanted);
        return wanted.Missing is { } missing ? missing : number;
    }

    private Outcome<Traced> Read(string field, SizeText text) =>
        Formula.Read(text.Text, field).Take(out var formula, out var refusal)
            ? formula.EvaluateLength(_sizes.Look, bare)
            : Unreadable(refusal);

    private bool IsFree(string name)
    {
        var isFree = _taken.Add(name);
        if (!isFree)
            GivenTwice.Add(name);
        return isFree;
    }

    private static Outcome<Traced> Unreadable(Refusal refusal) => refusal with { Rule = "formula.unreadable" };

    private Refusal NotPositive(string field, SizeText text, Traced size) =>
        new(
            $"\"{text.Text.Trim()}\" comes to {WhyText.Amount(size.Amount, LengthFormat.Of(bare))}; "
                + "a size must be more than nought: change it, or what it is worked out from.",
            field
        )
        {
            Rule = "size.not-positive",
        };
}
