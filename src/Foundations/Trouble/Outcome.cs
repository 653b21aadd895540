using System.Diagnostics.CodeAnalysis;

namespace Nookwright.Trouble;

/// <summary>Either a value, or the refusal that says why there is none.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public readonly record struct Outcome<T>
    where T : notnull
{
    private readonly T? _value;
    private readonly Refusal? _refusal;

    private Outcome(T? value, Refusal? refusal) => (_value, _refusal) = (value, refusal);

    /// <summary>True when there is a value.</summary>
    public bool Ok => _refusal is null && _value is not null;

    /// <summary>The value; asking for it when there is none is our own mistake and throws.</summary>
    public T Value => Ok ? _value! : throw new InvalidOperationException(Refusal.ToString());

    /// <summary>Why there is no value; asking for it when there is one is our own mistake and throws.</summary>
    public Refusal Refusal => _refusal ?? throw new InvalidOperationException("There is a value, not a refusal.");

    /// <summary>Takes the value out when there is one, else the refusal.</summary>
    public bool Take([MaybeNullWhen(false)] out T value, [MaybeNullWhen(true)] out Refusal refusal)
    {
        (value, refusal) = (_value, _refusal);
        return Ok;
    }

    /// <summary>The same outcome with its value turned into another.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next)
        where TNext : notnull => Ok ? next(_value!) : new Outcome<TNext>(default, Refusal);

    /// <summary>A value is an outcome.</summary>
    public static implicit operator Outcome<T>(T value) => new(value, null);

    /// <summary>A refusal is an outcome.</summary>
    public static implicit operator Outcome<T>(Refusal refusal) => new(default, refusal);
}
