#include "ui/keeping_safe/card_part.h"

#include <QPointer>

#include "ui/shell/import_progress.h"
#include "ui/shell/session.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QStringList card_words(const SafeToDelete& found) {
    const auto safe = static_cast<int>(found.safe.size());
    QStringList words{CardPart::tr(
        "Safe to delete, since the library and a backup hold them: %n photo(s).", nullptr, safe)};
    if (!found.stopped && found.to_keep.empty()) {
        if (safe > 0) words << CardPart::tr("There is nothing else on it.");
        return words;
    }
    if (found.stopped) {
        words << CardPart::tr("Stopped: keep what was not looked at.");
    }
    if (!found.to_keep.empty()) words << CardPart::tr("To be kept for now:");
    for (const FileToKeep& file : found.to_keep) words << said_here(sentence(file));
    return words;
}

}  // namespace

CardPart::CardPart(Session& session)
    : WorkPart(session, tr("What may be deleted from a card"),
               tr("A photo is safe to delete from a card or phone once the library holds it whole "
                  "and a backup on another disk holds it too. Both are looked at here; nothing is "
                  "deleted.")) {}

void CardPart::refresh() {
    empty_layout(ways());
    std::vector<QPushButton*> buttons;
    if (!offered_.empty()) {
        //: a card or folder
        buttons.push_back(
            make_button(tr("Look at %1").arg(from_utf8(offered_.front().filename().native()))));
        connect(buttons.back(), &QPushButton::clicked, this, [this] { look_at(offered_); });
    }
    buttons.push_back(make_button(tr("Choose a card or folder…")));
    connect(buttons.back(), &QPushButton::clicked, this, [this] {
        const Path chosen = choose_folder(tr("Card or folder to look at"));
        if (!chosen.empty()) look_at({chosen});
    });
    ways()->addWidget(make_button_row(buttons));
}

void CardPart::offer(const std::vector<Path>& sources) {
    offered_ = sources;
}

void CardPart::look_at(const std::vector<Path>& sources) {
    if (!may_begin()) return;
    Job* job = session().start<SafeToDelete>(
        [sources](Library& library, Job& working) {
            return safe_to_delete(library, {.sources = sources,
                                            .progress = progress_to(working),
                                            .stop = working.stop_token()});
        },
        [part = QPointer(this)](const SafeToDelete& found) {
            if (part) part->report(card_words(found));
        });
    show_work(job, tr("Looking at the card, the library and the backups"));
}

}  // namespace quarterturn
