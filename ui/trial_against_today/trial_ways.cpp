// The ways in and out of the screen: photos of the day to their places, and the sheet.

#include <QPointer>
#include <QStackedWidget>

#include "indexer/looks/exported_record.h"
#include "indexer/sheet/as_made_sheet.h"
#include "indexer/sheet/photos_on.h"
#include "ui/painter/paint.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/trial_against_today/day_photos_panel.h"
#include "ui/trial_against_today/trial_screen.h"

namespace quarterturn {

void TrialScreen::show_waiting_photos() {
    const auto seats = planned_seats(session_.library(), *wedding_);
    const auto waiting = propose_day_photos(session_.library(), *wedding_, seats).size();
    place_button_->setText(tr("Place %n photo(s) of the day", nullptr, static_cast<int>(waiting)));
    place_button_->setVisible(waiting > 0);
}

void TrialScreen::propose_places() {
    if (proposing_ || !wedding_) return;
    proposing_ = session_.start<std::vector<DayProposal>>(
        [&decoder = session_.decoder(), wedding = *wedding_](Library& library, Job&) {
            return propose_seen_day_photos(library, decoder, wedding,
                                           planned_seats(library, wedding));
        },
        [screen = QPointer(this)](const std::vector<DayProposal>& proposals) {
            if (!screen || !screen->as_made_) return;
            screen->day_photos_->show_proposals(*screen->as_made_, proposals);
            screen->stage_->setCurrentWidget(screen->day_photos_);
        });
}

void TrialScreen::place_photos() {
    stage_->setCurrentWidget(comparing_);
    session_.change_photos([this](Library& library) {
        place_day_photos(library, *wedding_, planned_seats(library, *wedding_),
                         day_photos_->confirmed());
    });
}

void TrialScreen::ask_where() {
    const auto file = ways_->ask_file(tr("Save as agreed, as made"),
                                      portable_name("As made " + as_made_->wedding.name),
                                      QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file) save_to(*file);
}

void TrialScreen::save_to(const Path& file) {
    ways_->save(
        [&decoder = session_.decoder(), wedding = *wedding_,
         today = session_.today()](Library& library) {
            const auto ruler = make_text_ruler();
            return for_own_work(
                library,
                as_made_sheet(library, decoder, *ruler, wedding, usual_paper(library.settings())),
                today);
        },
        file);
}

}  // namespace quarterturn
