#include "ui/contact_sheet/contact_sheet_screen.h"

#include <QCheckBox>
#include <QStackedWidget>

#include "indexer/record/caution.h"
#include "indexer/sheet/photos_on.h"
#include "ui/consent/consent_words.h"
#include "ui/contact_sheet/page_view.h"
#include "ui/look_choice/look_choice.h"
#include "ui/printing/ways_out.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int choices_width_steps = 70;
constexpr int preview_pixels = 1800;  // of a page's long edge: sharp at twice the size of 900

}  // namespace

ContactSheetScreen::ContactSheetScreen(Session& session) : session_(session) {
    build();
}

QString ContactSheetScreen::help() const {
    return tr(
        "The page is shown as it will be printed: left, front, right and back side by side, "
        "before above after. Choose the paper, then save or print it. A sheet for others, such as "
        "for teaching, is saved only when everybody on it allows that.");
}

void ContactSheetScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here the photos of a look come together on paper. There is no look "
                              "yet: it is added to a client."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    going_ = new QWidget;
    auto* row = new QHBoxLayout(going_);
    row->setContentsMargins(space(6), space(3), space(6), 0);
    row->setSpacing(space(6));
    view_ = new PageView;
    row->addWidget(view_, 1);
    row->addWidget(build_choices());
    pages_->addWidget(empty_);
    pages_->addWidget(going_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* ContactSheetScreen::build_choices() {
    auto* choices = new QWidget;
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(0, 0, space(3), 0);  // beside a scroll bar
    column->setSpacing(space(2));
    add_choices(*column);
    column->addSpacing(space(3));
    add_ways_out(*column);
    column->addStretch();
    QScrollArea* side = make_scrolling_side(choices);
    side->setFixedWidth(space(choices_width_steps));
    return side;
}

void ContactSheetScreen::add_choices(QVBoxLayout& column) {
    looks_ = new LookChoice(session_);
    connect(looks_, &LookChoice::chosen, this, [this](LookId look) {
        session_.choose_look(look);
        session_.attempt([this] { refresh(); });
    });
    kinds_ = new QComboBox;
    papers_ = new QComboBox;
    for (const Paper paper : all_papers) papers_->addItem(shown(paper));
    during_ = new QCheckBox(tr("With a row of \"during\" photos"));
    for (QComboBox* choice : {kinds_, papers_}) {
        connect(choice, &QComboBox::activated, this, &ContactSheetScreen::lay_out);
    }
    connect(during_, &QCheckBox::toggled, this, &ContactSheetScreen::lay_out);
    const auto add = [&](const QString& name, QComboBox* choice) {
        choice->setAccessibleName(name);
        column.addWidget(make_quiet(name));
        column.addWidget(choice);
    };
    add(tr("Look"), looks_);
    add(tr("What it shows"), kinds_);
    add(tr("Paper"), papers_);
    made_for_ = new QComboBox;
    made_for_->addItem(tr("her and me"));
    for (const Use use : all_uses) {
        if (use == Use::own_record) continue;
        made_for_->addItem(shown(use), static_cast<int>(use));
    }
    connect(made_for_, &QComboBox::activated, this, [this] {
        if (!shown_wish_ || !shown_wish_->same_as(wish())) lay_out();
        show_ways_out();
    });
    add(tr("Made for"), made_for_);
    column.addWidget(during_);
    page_row_ = new QWidget;
    auto* row = new QHBoxLayout(page_row_);
    row->setContentsMargins(0, 0, 0, 0);
    previous_page_ = make_button(tr("Previous page"));
    next_page_ = make_button(tr("Next page"));
    connect(previous_page_, &QPushButton::clicked, this, [this] { turn_page(-1); });
    connect(next_page_, &QPushButton::clicked, this, [this] { turn_page(1); });
    row->addWidget(previous_page_);
    row->addWidget(next_page_);
    row->addStretch();
    page_words_ = make_quiet({});
    column.addWidget(page_words_);
    column.addWidget(page_row_);
}

void ContactSheetScreen::add_ways_out(QVBoxLayout& column) {
    QPushButton* pdf = make_next_button(tr("Save as PDF…"));
    QPushButton* picture = make_button(tr("Save as a picture…"));
    QPushButton* paper = make_button(tr("Print…"));
    connect(pdf, &QPushButton::clicked, this,
            [this] { ask_where(QStringLiteral(".pdf"), tr("PDF (*.pdf)")); });
    connect(picture, &QPushButton::clicked, this,
            [this] { ask_where(QStringLiteral(".png"), tr("Pictures (*.png *.jpg *.jpeg)")); });
    connect(paper, &QPushButton::clicked, this, &ContactSheetScreen::print);
    ways_out_ = {pdf, picture, paper};
    for_others_ = make_text(
        tr("For others it carries the look, the angles and the craft, and neither her name nor her "
           "day, cautions or words. It is saved as PDF, when all its photos may go, and stands in "
           "the list of what went out."));
    column.addWidget(for_others_);
    shows_person_ = make_quiet(tr(caution_before_passing_on));
    shows_person_->hide();
    column.addWidget(shows_person_);
    for (QPushButton* way : ways_out_) column.addWidget(way);
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    column.addWidget(notice_);
}

void ContactSheetScreen::arrive(const Place& place) {
    if (place.look) session_.choose_look(place.look);
    notice_->say({});
}

void ContactSheetScreen::refresh() {
    look_ = likely_look(session_);
    pages_->setCurrentWidget(look_ ? going_ : static_cast<QWidget*>(empty_));
    looks_->show_looks(look_);
    if (!look_) return;
    fill_kinds();
    show_usual_paper();
    if (shown_wish_ && shown_wish_->same_as(wish()) &&
        shown_records_ == records_of(session_.library(), wish())) {
        return;
    }
    lay_out();
}

// The first choice; what she chooses here stands until she sets another one.
void ContactSheetScreen::show_usual_paper() {
    const Paper usual = usual_paper(session_.library().settings());
    if (std::exchange(usual_paper_, usual) == usual) return;
    papers_->setCurrentIndex(
        static_cast<int>(std::ranges::find(all_papers, usual) - all_papers.begin()));
}

void ContactSheetScreen::fill_kinds() {
    const QVariant before = kinds_->currentData();
    kinds_->clear();
    kinds_->addItem(tr("The look, angle by angle"));
    const auto look = session_.library().looks().find(*look_);
    for (const SittingId id : look->sittings) {
        const auto sitting = session_.library().sittings().find(id);
        if (!sitting) continue;
        //: a kind of appointment and its day
        kinds_->addItem(tr("Every frame: %1, %2")
                            .arg(shown(sitting->kind), short_shown(date_of(sitting->starts))),
                        QVariant::fromValue(qlonglong{id.value}));
    }
    kinds_->setCurrentIndex(std::max(0, kinds_->findData(before)));
}

SheetWish ContactSheetScreen::wish() const {
    SheetWish wish;
    wish.look = *look_;
    if (kinds_->currentIndex() > 0) wish.sitting = SittingId{kinds_->currentData().toLongLong()};
    wish.wishes.paper = all_papers[static_cast<std::size_t>(papers_->currentIndex())];
    wish.wishes.during = during_->isChecked();
    wish.wishes.whom = made_for() ? SheetFor::others : SheetFor::own_work;
    return wish;
}

void ContactSheetScreen::lay_out() {
    if (laying_out_) laying_out_->disconnect(this);
    shown_wish_ = wish();
    const bool ok =
        session_.attempt([this] { shown_records_ = records_of(session_.library(), *shown_wish_); });
    if (!ok) return;
    sheet_.reset();
    show_sheet();
    laying_out_ = session_.start<DrawnSheet>(
        [wanted = *shown_wish_, &decoder = session_.decoder()](Library& library, Job&) {
            return drawn(laid_out(library, decoder, wanted), decoder, library.disk(),
                         preview_pixels);
        },
        [screen = QPointer(this), wanted = *shown_wish_,
         records = shown_records_](DrawnSheet sheet) {
            if (screen) screen->take_sheet(wanted, records, std::move(sheet));
        });
    connect(laying_out_, &Job::failed, notice_, &Notice::say);
}

void ContactSheetScreen::take_sheet(const SheetWish& wanted, const std::string& records,
                                    DrawnSheet sheet) {
    if (!wanted.same_as(*shown_wish_) || records != shown_records_) return;
    sheet_ = std::move(sheet);
    page_number_ = 0;
    show_sheet();
}

void ContactSheetScreen::show_sheet() {
    during_->setVisible(kinds_->currentIndex() == 0);
    show_ways_out();
    const int pages = sheet_ ? static_cast<int>(sheet_->pages.size()) : 0;
    page_row_->setVisible(pages > 1);
    previous_page_->setEnabled(page_number_ > 0);
    next_page_->setEnabled(page_number_ + 1 < pages);
    page_words_->setText(pages == 0 ? tr("Laying the page out…")
                                    : tr("Page %1 of %2").arg(page_number_ + 1).arg(pages));
    if (!sheet_ || sheet_->pages.empty()) {
        view_->show_page({}, tr("Laying the page out…"));
        return;
    }
    view_->show_page(sheet_->pages[static_cast<std::size_t>(page_number_)], {});
    shows_person_->setVisible(shows_photos(sheet_->document));
    view_->setAccessibleName(tr("%1, page %2 of %3")
                                 .arg(from_utf8(sheet_->document.title))
                                 .arg(page_number_ + 1)
                                 .arg(pages));
    QStringList problems;
    for (const std::string& problem : sheet_->problems) problems << from_utf8(problem);
    if (!problems.isEmpty()) notice_->say(problems.join(QLatin1Char('\n')));
}

void ContactSheetScreen::show_ways_out() {
    const bool others = made_for().has_value();
    for_others_->setVisible(others);
    for (QPushButton* way : ways_out_) {
        way->setEnabled(sheet_.has_value() && (!others || way == ways_out_.front()));
    }
}

std::optional<Use> ContactSheetScreen::made_for() const {
    if (made_for_->currentIndex() == 0) return std::nullopt;
    return static_cast<Use>(made_for_->currentData().toInt());
}

void ContactSheetScreen::turn_page(int by) {
    if (!sheet_) return;
    const int last = static_cast<int>(sheet_->pages.size()) - 1;
    page_number_ = std::clamp(page_number_ + by, 0, last);
    show_sheet();
}

void ContactSheetScreen::ask_where(const QString& ending, const QString& kinds) {
    const auto file =
        ways_->ask_file(tr("Save the sheet"), file_name(session_.library(), *look_), ending, kinds);
    if (file) save_to(*file);
}

void ContactSheetScreen::save_to(const Path& file) {
    if (!sheet_) return;
    if (const auto use = made_for()) return save_for_others(*use, file);
    ways_->save(own_sheet(sheet_->document, session_.today()), file);
}

void ContactSheetScreen::save_for_others(Use use, const Path& file) {
    ways_->save_as([document = sheet_->document, use, file, now = session_.now(),
                    &decoder = session_.decoder()](Library& library) {
        return write_for_others(library, decoder, document, {use, file}, now);
    });
}

void ContactSheetScreen::print() {
    if (!sheet_) return;
    ways_->lay_out_and_print(own_sheet(sheet_->document, session_.today()), tr("Print the sheet"));
}

}  // namespace quarterturn
