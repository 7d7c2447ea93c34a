#include "ui/client_record/client_record_screen.h"

#include <QStackedWidget>
#include <QTimer>

#include "indexer/looks/exported_record.h"
#include "indexer/sheet/client_sheet.h"
#include "ui/client_record/erase_part.h"
#include "ui/client_record/look_card.h"
#include "ui/client_record/photos_card.h"
#include "ui/client_search/client_search.h"
#include "ui/painter/paint.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/shared_row.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

Document record_pages(Library& library, ClientId client, Date day) {
    const auto ruler = make_text_ruler();
    return client_sheet(library, client_record(library, client), *ruler, day);
}

// Writes the folder; answers it, what could not be shown in the PDF, and what is not in it.
Written write_everything(Library& library, Decoder& decoder, ClientId client, const Path& folder,
                         LocalTime now) {
    const ClientRecord record = client_record(library, client);
    const auto ruler = make_text_ruler();
    const Document pages = client_sheet(library, record, *ruler, date_of(now));
    DrawnPdf pdf = draw_pdf(pages, decoder, library.disk());
    std::ranges::move(export_client(library, record, pdf.span(), folder, now),
                      std::back_inserter(pdf.problems));
    return {{folder}, std::move(pdf.problems)};
}

}  // namespace

ClientRecordScreen::ClientRecordScreen(Session& session) : session_(session) {
    build();
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        for (PhotosCard* card : photos_) card->show_picture(photo);
    });
}

QString ClientRecordScreen::help() const {
    return tr(
        "Everything that is kept of one client: her weddings, sittings, looks with their recipes, "
        "photos, and what she has allowed. Save it as PDF to read or print, or as a folder that "
        "holds the same as JSON and CSV for other programs. When she asks for it, erase her or "
        "one look for good: it says first what goes, what stays and why.");
}

void ClientRecordScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here everything about one client stands together. There is no "
                              "client yet."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    page_ = build_page();
    pages_->addWidget(empty_);
    pages_->addWidget(page_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* ClientRecordScreen::build_page() {
    const ScrollingPage page = make_scrolling_page();
    search_ = new ClientSearch(session_, tr("Records of %1"));
    connect(search_, &ClientSearch::chosen, this, [this](ClientId client) {
        session_.go_to({.moment = Moment::client_record, .client = client});
    });
    title_ = make_title({});
    note_ = make_text({});
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    erase_ = new ErasePart(session_);
    connect(erase_, &ErasePart::erased, this, [this](const QStringList& sentences) {
        notice_->say(sentences.join(QLatin1Char('\n')));
        session_.say(sentences.front());
    });
    cards_ = make_column(4);
    page.column->addWidget(search_);
    page.column->addWidget(title_);
    page.column->addWidget(note_);
    page.column->addLayout(build_ways_out());
    page.column->addWidget(make_quiet(tr(private_record)));
    page.column->addWidget(notice_);
    page.column->addWidget(erase_);
    page.column->addLayout(cards_);
    page.column->addStretch();
    return page.scroll;
}

QLayout* ClientRecordScreen::build_ways_out() {
    auto* row = new FlowLayout(space(2));
    QPushButton* pdf = make_next_button(tr("Save as PDF…"));
    QPushButton* everything = make_button(tr("Save as PDF, JSON and CSV…"));
    connect(pdf, &QPushButton::clicked, this, &ClientRecordScreen::ask_where_pdf);
    connect(everything, &QPushButton::clicked, this, &ClientRecordScreen::ask_where_everything);
    QPushButton* consent = make_button(tr("What she allows"));
    connect(consent, &QPushButton::clicked, this,
            [this] { session_.go_to({.moment = Moment::consent, .client = client_}); });
    QPushButton* erase = make_button(tr("Erase her…"));
    connect(erase, &QPushButton::clicked, this,
            [this] { session_.attempt([this] { erase_->ask(*client_); }); });
    for (QPushButton* button : {pdf, everything, consent, erase}) row->addWidget(button);
    return row;
}

void ClientRecordScreen::arrive(const Place& place) {
    if (place.client) client_ = place.client;
    notice_->say({});
}

void ClientRecordScreen::refresh() {
    Library& library = session_.library();
    if (!client_ || !library.clients().find(*client_)) {
        const auto clients = library.clients().all();
        client_.reset();
        if (!clients.empty()) client_ = clients.front().id;
    }
    pages_->setCurrentWidget(client_ ? page_ : static_cast<QWidget*>(empty_));
    erase_->refresh(client_);
    if (!client_) return;
    const ClientRecord record = client_record(library, *client_);
    // What is on screen stays as long as it is right, with the place she has scrolled to.
    const std::string now = client_record_json(record);
    search_->show_names(client_);
    if (std::exchange(shown_, now) != now) show_record(record);
}

// Nothing of it is painted before all of it has its size: while it is put together, it is squeezed
// into the place of what was there before.
void ClientRecordScreen::paint_once_laid_out() {
    QScrollArea* page = page_around(*title_);
    page->setUpdatesEnabled(false);
    QTimer::singleShot(0, page, [page] {
        lay_out_now(*page);
        page->setUpdatesEnabled(true);
    });
}

void ClientRecordScreen::show_record(const ClientRecord& record) {
    paint_once_laid_out();
    name_ = record.client.name;
    title_->setText(from_utf8(record.client.name));
    note_->setText(from_utf8(record.client.note));
    note_->setVisible(!record.client.note.empty());
    empty_layout(cards_);
    const ClientContent content = client_content(record);
    auto* facts = new SharedRow(space(4));
    for (const TextSection& section : content.facts) facts->addWidget(make_facts_card(section));
    cards_->addLayout(facts);
    for (std::size_t i = 0; i < content.looks.size(); ++i) {
        const Look& look = record.looks[i].look;
        QPushButton* erase = make_quiet_button(tr("Erase this look…"));
        erase->setAccessibleName(tr("Erase the look %1…").arg(from_utf8(look.name)));
        connect(erase, &QPushButton::clicked, this,
                [this, id = look.id] { session_.attempt([&] { erase_->ask_look(id); }); });
        cards_->addWidget(make_look_card(content.looks[i], *erase));
    }
    if (content.looks.empty()) cards_->addWidget(make_quiet(tr("No look is planned for her.")));
    show_photos(content.photos);
}

void ClientRecordScreen::show_photos(const std::vector<PhotoSection>& sections) {
    photos_.clear();
    std::vector<PictureWish> wishes;
    for (const PhotoSection& section : sections) {
        photos_.push_back(new PhotosCard(session_, section));
        cards_->addWidget(photos_.back());
        std::ranges::move(photos_.back()->wishes(), std::back_inserter(wishes));
    }
    if (sections.empty()) cards_->addWidget(make_quiet(tr("No photo is of her.")));
    session_.pictures().want(this, wishes);
}

void ClientRecordScreen::ask_where_pdf() {
    const auto file = ways_->ask_file(tr("Save her record"), portable_name(name_),
                                      QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file) save_pdf(*file);
}

void ClientRecordScreen::ask_where_everything() {
    const auto folder = ways_->ask_file(tr("A new folder for all of it"), portable_name(name_), {},
                                        tr("Folders (*)"));
    if (folder) save_everything(*folder);
}

void ClientRecordScreen::save_pdf(const Path& file) {
    ways_->save([client = *client_, day = session_.today()](
                    Library& library) { return record_pages(library, client, day); },
                file);
}

void ClientRecordScreen::save_everything(const Path& folder) {
    ways_->save_as([client = *client_, folder, now = session_.now(),
                    &decoder = session_.decoder()](Library& library) {
        return write_everything(library, decoder, client, folder, now);
    });
}

}  // namespace quarterturn
