#include "ui/portfolio_screen/portfolio_screen.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QPointer>
#include <QStackedWidget>

#include "ui/consent/consent_words.h"
#include "ui/portfolio_screen/balance_bars.h"
#include "ui/portfolio_screen/candidate_shelves.h"
#include "ui/portfolio_screen/export_part.h"
#include "ui/portfolio_screen/hair_only_page.h"
#include "ui/portfolio_screen/ledger_part.h"
#include "ui/portfolio_screen/photo_part.h"
#include "ui/portfolio_screen/selection_part.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/page.h"
#include "ui/widgets/page_stack.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int about_width_steps = 76;
constexpr Use first_use = Use::website;

}  // namespace

PortfolioScreen::PortfolioScreen(Session& session) : session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(3), space(6), space(2));
    column->setSpacing(space(3));
    column->addLayout(build_head());
    selection_ = new SelectionPart(session_);
    export_ = new ExportPart(session_);
    ledger_ = new LedgerPart(session_);
    hair_only_ = new HairOnlyPage(session_);
    connect(hair_only_, &HairOnlyPage::done, this, [this] {
        show_part(Part::choosing);
        shelves_->setFocus();
    });
    body_ = new PageStack;
    for (QWidget* part : {build_choosing(), static_cast<QWidget*>(export_),
                          static_cast<QWidget*>(ledger_), static_cast<QWidget*>(hair_only_)}) {
        body_->addWidget(part);
    }
    column->addWidget(body_, 1);
    column->addWidget(selection_);
    connect(selection_, &SelectionPart::changed, this, &PortfolioScreen::show_chosen);
    connect(selection_, &SelectionPart::looked_at, this,
            [this](PhotoId photo) { session_.attempt([&] { look_at(photo); }); });
    selection_->call_new_ones(capitalised_words(shown(use())));
    show_part(Part::choosing);
}

QString PortfolioScreen::help() const {
    return tr(
        "Choosing: the usable photos of finished looks for one use, those that may go first, then "
        "those of looks that are signed off, then the sharpest. Beside them stands what is missing "
        "to clear the one you look at, whose photo it is, and who is seen in it. Where only her "
        "hair "
        "may be shown, crops and covers that leave the face out are proposed; one counts when you "
        "have looked at it and said so. The bars say what "
        "your selection shows often, and what never.\n\n"
        "Arrow keys: through the photos\n"
        "Enter: into the selection, or out of it\n"
        "Ctrl with an arrow key, or the mouse: moves a photo of the selection\n"
        "Delete: takes it out\n\n"
        "Sending out: writes new pictures of what may go, or all of them as a page for your "
        "website. What went out: what has to be taken "
        "down, what ends soon, and where you put each picture.");
}

QLayout* PortfolioScreen::build_head() {
    parts_ = new QButtonGroup(this);
    auto* parts = new FlowLayout(space(2));
    add_part(*parts, Part::choosing, tr("Choosing"));
    add_part(*parts, Part::sending, tr("Sending out"));
    add_part(*parts, Part::ledger, tr("What went out"));
    uses_ = new QComboBox;
    for (const Use use : all_uses) uses_->addItem(capitalised_words(shown(use)));
    uses_->setCurrentIndex(static_cast<int>(first_use));
    uses_->setAccessibleName(tr("For which use"));
    connect(uses_, &QComboBox::activated, this, &PortfolioScreen::use_changed);
    looking_words_ = make_quiet(tr("Looking through the photos…"));
    looking_words_->setWordWrap(false);
    looking_words_->hide();
    QLabel* for_use = make_quiet(tr("For"));
    for_use->setWordWrap(false);
    QHBoxLayout* row = make_row(2);
    row->addLayout(parts, 1);
    row->addWidget(for_use);
    row->addWidget(uses_);
    QVBoxLayout* head = make_column(1);
    head->addLayout(row);
    head->addWidget(looking_words_);
    return head;
}

void PortfolioScreen::add_part(QLayout& row, Part part, const QString& name) {
    QPushButton* button = make_button(name);
    button->setCheckable(true);
    parts_->addButton(button, static_cast<int>(part));
    connect(button, &QPushButton::clicked, this, [this, part] {
        show_part(part);
        session_.attempt([this] { refresh(); });
    });
    row.addWidget(button);
}

QWidget* PortfolioScreen::build_choosing() {
    auto* choosing = new QWidget;
    auto* row = new QHBoxLayout(choosing);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(5));
    shelves_ = new CandidateShelves(session_, candidates_);
    connect(shelves_, &CandidateShelves::looked_at, this,
            [this](PhotoId photo) { session_.attempt([&] { look_at(photo); }); });
    connect(shelves_, &CandidateShelves::toggled, selection_, &SelectionPart::toggle);
    auto* nothing = new EmptyPage(
        tr("Here the usable photos of finished looks stand, as far as they may be shown. A photo "
           "comes here when it is tagged with a look and with the stage after."),
        tr("Go round the head"));
    connect(nothing, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::round_the_head}); });
    nothing_ = make_scrolling_side(nothing);  // where the window is low
    found_ = new QStackedWidget;
    found_->addWidget(shelves_);
    found_->addWidget(nothing_);
    row->addWidget(found_, 1);
    QScrollArea* side = make_scrolling_side(build_side());
    side->setFixedWidth(space(about_width_steps));
    row->addWidget(side);
    return choosing;
}

QWidget* PortfolioScreen::build_side() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, space(4), space(4));
    column->setSpacing(space(2));
    about_ = new PhotoPart(session_);
    connect(about_, &PhotoPart::toggled, this, [this] {
        if (photo_) selection_->toggle(*photo_);
    });
    connect(about_, &PhotoPart::hair_only_asked, this,
            [this] { session_.attempt([this] { open_hair_only(); }); });
    families_ = new BalanceBars(tr("Look families"));
    textures_ = new BalanceBars(tr("Texture of the hair"));
    colours_ = new BalanceBars(tr("Colour of the hair"));
    column->addWidget(about_);
    column->addSpacing(space(3));
    counted_ = make_heading({});
    column->addWidget(counted_);
    for (BalanceBars* bars : {families_, textures_, colours_}) column->addWidget(bars);
    column->addStretch();
    return side;
}

void PortfolioScreen::show_part(Part part) {
    parts_->button(static_cast<int>(part))->setChecked(true);
    body_->setCurrentIndex(static_cast<int>(part));
    selection_->setVisible(part != Part::ledger);
}

void PortfolioScreen::open_hair_only() {
    const auto photo = photo_ ? session_.library().photos().find(*photo_) : std::nullopt;
    if (!photo) return;
    body_->setCurrentWidget(hair_only_);
    selection_->hide();
    hair_only_->open(*photo);
}

void PortfolioScreen::arrive(const Place& place) {
    just_found_ = false;
    if (place.use) uses_->setCurrentIndex(static_cast<int>(*place.use));
    if (place.to_take_down) return show_part(Part::ledger);
    if (!place.photo) return;
    photo_ = place.photo;
    show_part(Part::choosing);
}

Use PortfolioScreen::use() const {
    return all_uses[static_cast<std::size_t>(uses_->currentIndex())];
}

void PortfolioScreen::use_changed() {
    selection_->call_new_ones(capitalised_words(shown(use())));
    just_found_ = false;
    session_.attempt([this] { refresh(); });
}

void PortfolioScreen::refresh() {
    selection_->refresh();
    show_tasks();
    if (body_->currentWidget() == ledger_) return ledger_->refresh();
    if (std::exchange(just_found_, false)) return;
    look_for_candidates();
}

// How much of what went out has to be taken down is said wherever she is here.
void PortfolioScreen::show_tasks() {
    const auto tasks = ledger_tasks(session_.library(), session_.today(), 0).to_take_down;
    parts_->button(static_cast<int>(Part::ledger))
        ->setText(tasks.empty() ? tr("What went out")
                                : tr("What went out: %n to take down", nullptr,
                                     static_cast<int>(tasks.size())));
}

// The search for faces decodes photos that nobody has looked at yet.
void PortfolioScreen::look_for_candidates() {
    if (looking_) {
        look_again_ = true;
        return;
    }
    looking_ = true;
    looking_words_->show();
    Job* job = session_.start<std::vector<Candidate>>(
        [use = use(), on = session_.today(), &decoder = session_.decoder()](
            Library& library, Job&) { return candidates(library, decoder, use, on); },
        [screen = QPointer(this), use = use()](std::vector<Candidate> all) {
            if (screen) screen->show_found(use, std::move(all));
        });
    connect(job, &Job::failed, this, [this] { just_found_ = true; });
    connect(job, &Job::ended, this, [this] {
        looking_ = false;
        looking_words_->hide();
        if (std::exchange(look_again_, false)) look_for_candidates();
    });
}

void PortfolioScreen::show_found(Use for_use, std::vector<Candidate> all) {
    just_found_ = true;
    if (for_use != use()) {
        look_again_ = true;
        return;
    }
    if (all != candidates_.all()) {
        candidates_.show(std::move(all));
        candidates_.mark(selection_->photos());
    }
    const bool any = candidates_.rowCount() > 0;
    found_->setCurrentWidget(any ? static_cast<QWidget*>(shelves_) : nothing_);
    const int position = photo_ ? candidates_.position_of(*photo_) : -1;
    if (position >= 0) shelves_->setCurrentIndex(candidates_.index(position));
    session_.attempt([this] { show_chosen(); });
}

void PortfolioScreen::look_at(std::optional<PhotoId> photo) {
    photo_ = photo;
    const auto record = photo ? session_.library().photos().find(*photo) : std::nullopt;
    about_->show_photo(record, use(), record && selection_->holds(record->id));
}

void PortfolioScreen::show_chosen() {
    candidates_.mark(selection_->photos());
    look_at(photo_);
    Library& library = session_.library();
    std::vector<PhotoId> counted = selection_->photos();
    counted_->setText(counted.empty() ? tr("What may go shows") : tr("The selection shows"));
    for (int i = 0; selection_->photos().empty() && i < candidates_.ready(); ++i) {
        counted.push_back(candidates_.at(i).photo.id);
    }
    families_->show_counts(balance_of(library, counted, Fact::family));
    textures_->show_counts(balance_of(library, counted, Fact::texture));
    colours_->show_counts(balance_of(library, counted, Fact::colour));
    export_->show_selection(use(), selection_->in_hand());
}

}  // namespace quarterturn
