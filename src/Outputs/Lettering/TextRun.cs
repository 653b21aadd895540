namespace Nookwright.Lettering;

/// <summary>How a stretch of a label is set.</summary>
public enum TextSetting
{
    /// <summary>On the baseline, full size.</summary>
    Plain,

    /// <summary>A fraction's numerator: small and raised.</summary>
    Numerator,

    /// <summary>The fraction slash: full size.</summary>
    Slash,

    /// <summary>A fraction's denominator: small, on the baseline.</summary>
    Denominator,
}

/// <summary>A stretch of a label that is set in one way, so that every back end sets fractions alike.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Setting">How it is set.</param>
public readonly record struct TextRun(string Text, TextSetting Setting)
{
    /// <summary>U+2044, the fraction slash.</summary>
    public const char FractionSlash = '\u2044';

    /// <summary>The size of a fraction's digits over the label's size.</summary>
    public const double SmallSize = 0.68;

    /// <summary>How far a numerator is raised, over the label's size.</summary>
    public const double Raised = 0.28;

    /// <summary>The size of this stretch over the label's size.</summary>
    public double Size => Setting is TextSetting.Numerator or TextSetting.Denominator ? SmallSize : 1;

    /// <summary>How far it stands above the baseline, over the label's size.</summary>
    public double Rise => Setting == TextSetting.Numerator ? Raised : 0;

    /// <summary>The stretches of a label, in order: digits on both sides of a fraction slash make a fraction.</summary>
    public static IReadOnlyList<TextRun> Of(string text)
    {
        var runs = new List<TextRun>();
        var plainFrom = 0;
        for (var slash = text.IndexOf(FractionSlash); slash >= 0; slash = text.IndexOf(FractionSlash, slash + 1))
        {
            var (from, to) = DigitsAround(text, slash, plainFrom);
            if (from == slash || to == slash + 1)
                continue;
            AddPlain(runs, text[plainFrom..from]);
            runs.Add(new(text[from..slash], TextSetting.Numerator));
            runs.Add(new("\u2044", TextSetting.Slash));
            runs.Add(new(text[(slash + 1)..to], TextSetting.Denominator));
            plainFrom = to;
        }
        AddPlain(runs, text[plainFrom..]);
        return runs;
    }

    private static (int From, int To) DigitsAround(string text, int slash, int floor)
    {
        var (from, to) = (slash, slash + 1);
        while (from > floor && char.IsAsciiDigit(text[from - 1]))
            from--;
        while (to < text.Length && char.IsAsciiDigit(text[to]))
            to++;
        return (from, to);
    }

    private static void AddPlain(List<TextRun> runs, string text)
    {
        if (text.Length > 0)
            runs.Add(new(text, TextSetting.Plain));
    }
}
