#include "indexer/sheet/recovery_key_sheet.h"

#include "indexer/record/date_words.h"
#include "indexer/sheet/header.h"
#include "indexer/sheet/running_text.h"

namespace quarterturn {
namespace {

constexpr double key_points = 22;
constexpr double words_points = 12;
constexpr std::size_t groups_in_line = 3;

// Three groups a line: "7K3M - 0A1B - …" is copied group by group.
std::vector<std::string> key_lines(const std::string& key) {
    std::vector<std::string> lines;
    std::string line;
    std::size_t groups = 0;
    for (const char c : key) {
        if (c != '-') {
            line += c;
        } else if (++groups % groups_in_line == 0) {
            lines.push_back(std::exchange(line, {}));
        } else {
            line += "   ";
        }
    }
    lines.push_back(line);
    return lines;
}

}  // namespace

Document recovery_key_sheet(const RecoveryKeyPage& page, TextRuler& ruler, Paper paper) {
    SheetContent content;
    content.title = "Recovery key";
    content.header.client = "Recovery key";
    content.header.lines = {"Of the library in " + page.library.string(),
                            "Made on " + long_date(page.made)};
    content.header.again = "Recovery key";
    content.business_line = page.business_line;
    content.private_line = "Whoever holds this paper can open the library and its backups.";
    SheetFlow flow(content, sheet_style(paper), ruler);
    put_header(flow, content.header);
    for (const std::string& line : key_lines(page.key)) {
        put_paragraph(flow, text_item(line, key_points, true));
    }
    put_section(flow, "What it is for");
    for (const char* words :
         {"If the passphrase is forgotten, this opens the library and its backups: type it where "
          "the passphrase is asked for, and set a new passphrase then.",
          "Without the passphrase and without this paper nobody can open them, nor help.",
          "Small letters, spaces and hyphens make no difference. 0 is the figure nought and 1 the "
          "figure one; the letters I, L, O and U do not occur. The last group finds slips.",
          "Put it away apart from the computer and from the drive with the backup, and remove the "
          "file that it was printed from. A new recovery key makes this one useless for the "
          "library; a backup opens with it until it is made again."}) {
        put_paragraph(flow, text_item(words, words_points));
    }
    return flow.finish();
}

}  // namespace quarterturn
