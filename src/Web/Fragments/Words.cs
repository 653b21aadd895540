using System.Text.Json;

namespace Nookwright.Web.Fragments;

/// <summary>Words of the document as they stand on a page.</summary>
public static class Words
{
    /// <summary>A word of a choice: <c>LeftFront</c> is "left front".</summary>
    public static string Of(Enum word) =>
        JsonNamingPolicy.SnakeCaseLower.ConvertName(word.ToString()).Replace('_', ' ');
}
