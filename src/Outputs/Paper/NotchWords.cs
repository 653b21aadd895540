using Nookwright.Parts;

namespace Nookwright.Paper;

/// <summary>A corner that is cut out of a part after it has been cut to size, in words.</summary>
internal static class NotchWords
{
    /// <summary>Seen as the part is drawn: from its show face, its length to the right.</summary>
    public static string Of(Notch notch, JobWords words)
    {
        var corner = (notch.AtHigh ? "upper " : "lower ") + (notch.AtEnd ? "right" : "left");
        return $"then cut {words.BareSides(notch.Length, notch.Width)} out of the {corner} corner";
    }
}
