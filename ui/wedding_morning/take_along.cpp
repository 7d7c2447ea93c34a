#include "ui/wedding_morning/take_along.h"

#include "indexer/looks/exported_record.h"
#include "indexer/looks/passing_on.h"
#include "indexer/record/caution.h"
#include "indexer/sheet/board_sheet.h"
#include "indexer/sheet/phone_page.h"
#include "indexer/sheet/photos_on.h"
#include "indexer/sheet/take_down_card.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

WaysOut::LayOut board_pages(Decoder& decoder, WeddingId wedding, Paper paper, Date today) {
    return [&decoder, wedding, paper, today](Library& library) {
        const auto ruler = make_text_ruler();
        return for_own_work(
            library, board_sheet(wedding_board(library, wedding), library, decoder, *ruler, paper),
            today);
    };
}

Written write_phone_page(Library& library, Decoder& decoder, WeddingId wedding,
                         std::optional<ClientId> client, LocalTime now, const Path& file) {
    WeddingBoard board = wedding_board(library, wedding);
    if (client) keep_only(board, *client);
    refuse_against_own_work(library, photos_on(board), date_of(now));
    PhonePage page = phone_page(board, library, decoder, now);
    replace_file(library.disk(), file, std::as_bytes(std::span(page.html)));
    if (!photos_on(board).empty()) page.problems.emplace_back(caution_before_passing_on);
    return {{file}, std::move(page.problems)};
}

Written write_card(Library& library, Decoder& decoder, LookId look, Date today, const Path& file) {
    const auto ruler = make_text_ruler();
    TakeDown card = take_down(library, look);
    const Document page = for_own_work(
        library, take_down_card(card, library, decoder, *ruler, usual_paper(library.settings())),
        today);
    Written written = write_pdf(page, decoder, library.disk(), file);
    std::ranges::move(card.lacks, std::back_inserter(written.problems));
    if (shows_photos(page)) written.problems.emplace_back(caution_before_passing_on);
    return written;
}

}  // namespace

QString shown(TakenAlong what) {
    switch (what) {
        case TakenAlong::print:
            return TakeAlong::tr("Print the board…");
        case TakenAlong::pdf:
            return TakeAlong::tr("Save the board for A4 paper…");
        case TakenAlong::large_pdf:
            return TakeAlong::tr("Save the board for A3 paper…");
        case TakenAlong::phone_page:
            return TakeAlong::tr("Save the board for a phone…");
        case TakenAlong::phone_page_of_client:
            return TakeAlong::tr("Save hers alone for a phone…");
        case TakenAlong::take_down_card:
            return TakeAlong::tr("Save the take-down card…");
    }
    return {};
}

TakeAlong::TakeAlong(Session& session, Notice& notice, QWidget& window)
    : QObject(&window),
      session_(session),
      notice_(notice),
      ways_(new WaysOut(session, notice, window)) {}

void TakeAlong::take(TakenAlong what, const TakenFrom& from) {
    switch (what) {
        case TakenAlong::print:
            return print(from);
        case TakenAlong::phone_page:
            return ask_phone_page(from, false);
        case TakenAlong::phone_page_of_client:
            return ask_phone_page(from, true);
        case TakenAlong::take_down_card:
            return ask_card(from);
        case TakenAlong::pdf:
        case TakenAlong::large_pdf:
            break;
    }
    const auto file = ask_pdf(tr("Save the board"), "Board " + from.wedding.name);
    if (file) save_board(from, what == TakenAlong::pdf ? Paper::a4 : Paper::a3, *file);
}

std::optional<Path> TakeAlong::ask_pdf(const QString& title, const std::string& name) {
    return ways_->ask_file(title, portable_name(name), QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
}

void TakeAlong::ask_phone_page(const TakenFrom& from, bool of_client) {
    const std::string name = "Board " + (of_client ? from.client.name : from.wedding.name);
    const auto file = ways_->ask_file(tr("Save for a phone"), portable_name(name),
                                      QStringLiteral(".html"), tr("Page for a phone (*.html)"));
    if (!file) return;
    save_phone_page(from.wedding.id, of_client ? std::optional(from.client.id) : std::nullopt,
                    *file);
}

void TakeAlong::ask_card(const TakenFrom& from) {
    if (!from.look) {
        notice_.say(
            tr("No look of hers is recorded for this wedding yet, so there is nothing to "
               "take down."));
        return;
    }
    const auto file = ask_pdf(tr("Save the take-down card"), "Take-down card " + from.client.name);
    if (file) save_card(*from.look, *file);
}

void TakeAlong::save_board(const TakenFrom& from, Paper paper, const Path& file) {
    ways_->save(board_pages(session_.decoder(), from.wedding.id, paper, session_.today()), file);
}

void TakeAlong::save_phone_page(WeddingId wedding, std::optional<ClientId> client,
                                const Path& file) {
    ways_->save_as([wedding, client, file, now = session_.now(),
                    &decoder = session_.decoder()](Library& library) {
        return write_phone_page(library, decoder, wedding, client, now, file);
    });
}

void TakeAlong::save_card(LookId look, const Path& file) {
    ways_->save_as(
        [look, file, today = session_.today(), &decoder = session_.decoder()](Library& library) {
            return write_card(library, decoder, look, today, file);
        });
}

void TakeAlong::print(const TakenFrom& from) {
    const Paper paper = usual_paper(session_.library().settings());
    ways_->lay_out_and_print(
        board_pages(session_.decoder(), from.wedding.id, paper, session_.today()),
        tr("Print the board"));
}

}  // namespace quarterturn
