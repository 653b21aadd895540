using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>A text somebody typed, read from left to right; keeps the first trouble met.</summary>
internal sealed class TypedText(string text)
{
    public string Text => text;

    public int At { get; set; }

    public Refusal? Trouble { get; private set; }

    public bool IsAtEnd => At >= text.Length;

    public char Now => Ahead(0);

    public char Ahead(int count) => At + count < text.Length ? text[At + count] : '\0';

    public char Before => At > 0 ? text[At - 1] : '\0';

    /// <summary>Steps over spaces of every width; tells whether there were any.</summary>
    public bool SkipSpace()
    {
        var start = At;
        while (char.IsWhiteSpace(Now))
            At++;
        return At > start;
    }

    public string TakeWhile(Func<char, bool> belongs)
    {
        var start = At;
        while (!IsAtEnd && belongs(Now))
            At++;
        return text[start..At];
    }

    public bool Take(char sign)
    {
        if (IsAtEnd || Now != sign)
            return false;
        At++;
        return true;
    }

    /// <summary>Notes what is wrong at a place (counted from 0), unless something was wrong before.</summary>
    public void Refuse(string message, int at) => Trouble ??= new Refusal(message, Column: at + 1);

    /// <summary>The word at the cursor, for messages: up to the next space.</summary>
    public string Word()
    {
        var end = At;
        while (end < text.Length && !char.IsWhiteSpace(text[end]) && end - At < 20)
            end++;
        return text[At..end];
    }
}
