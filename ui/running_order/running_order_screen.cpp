#include "ui/running_order/running_order_screen.h"

#include <QComboBox>
#include <QScrollArea>
#include <QStackedWidget>

#include "indexer/looks/exported_record.h"
#include "indexer/looks/kit_list.h"
#include "indexer/sheet/running_order_sheet.h"
#include "indexer/sheet/wording.h"
#include "ui/painter/paint.h"
#include "ui/printing/ways_out.h"
#include "ui/running_order/client_part.h"
#include "ui/running_order/morning_edits.h"
#include "ui/running_order/morning_plan_part.h"
#include "ui/running_order/planner.h"
#include "ui/running_order/stylists_part.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/wedding_choice.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 72;

// A plan from before, as far as it still fits, while the next one is being found.
std::vector<Seat> still_fitting(const std::vector<Seat>& seats, const MorningNeeds& needs) {
    std::vector<Seat> fitting;
    for (const Seat& seat : seats) {
        const auto client = std::ranges::find(needs.clients, seat.client, &MorningClient::client);
        if (client != needs.clients.end()) fitting.push_back(seat);
    }
    return fitting;
}

}  // namespace

RunningOrderScreen::RunningOrderScreen(Session& session)
    : session_(session), planner_(new Planner(this)) {
    build();
    connect(planner_, &Planner::planned, this,
            [this] { session_.attempt([this] { show_plan(); }); });
}

RunningOrderScreen::~RunningOrderScreen() = default;

QString RunningOrderScreen::help() const {
    return tr(
        "Who sits when on the wedding morning. Drag a bar along the time or to another stylist; "
        "what would follow is said while you drag, and undone with Ctrl+Z. With the keyboard, Tab "
        "to a bar: the arrow keys move it by 5 minutes, with Shift by 1, up and down to another "
        "stylist; Return shows what she needs. A set takes its finish along, a finish moves alone. "
        "The thin line under the bars is hair that cools.");
}

void RunningOrderScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here a wedding morning is planned: who sits when, and with whom. "
                              "There is no wedding yet."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    going_ = new QWidget;
    auto* row = new QHBoxLayout(going_);
    row->setContentsMargins(space(6), space(3), space(6), 0);
    row->setSpacing(space(5));
    QWidget* side = build_side();
    plan_part_ = new MorningPlanPart(session_);
    connect(plan_part_, &MorningPlanPart::given_up, this, &RunningOrderScreen::show_plan);
    connect(plan_part_, &MorningPlanPart::moved, this, &RunningOrderScreen::move);
    connect(plan_part_, &MorningPlanPart::chosen, client_, &ClientPart::choose);
    connect(plan_part_, &MorningPlanPart::minutes_given, this,
            [this](ClientId client, int minutes) {
                change_wish(client,
                            [=](MorningWish& wish) { wish.work = ChairWork{.before = minutes}; });
            });
    connect(plan_part_, &MorningPlanPart::ready_by_given, this,
            [this](ClientId client, int minute) {
                change_wish(client, [=](MorningWish& wish) { wish.ready_by = minute; });
            });
    connect(plan_part_, &MorningPlanPart::not_understood, wrong_, &Notice::say);
    row->addWidget(make_scrolling_side(plan_part_), 1);
    row->addWidget(side);
    pages_->addWidget(empty_);
    pages_->addWidget(going_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* RunningOrderScreen::build_side() {
    auto* choices = new QWidget;
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(0, 0, space(3), space(4));  // beside a scroll bar
    column->setSpacing(space(2));
    add_choices(*column);
    column->addSpacing(space(2));
    wrong_ = new Notice;
    stylists_ = new StylistsPart;
    client_ = new ClientPart;
    connect(stylists_, &StylistsPart::changed, this,
            [this](const std::vector<StylistHours>& stylists) {
                Morning after = morning_->morning;
                after.stylists = stylists;
                change(after, tr("changed the stylists' hours"));
            });
    connect(client_, &ClientPart::changed, this, [this](const Morning& after, const QString& name) {
        change(after, tr("changed the morning of %1").arg(name));
    });
    connect(stylists_, &StylistsPart::not_understood, wrong_, &Notice::say);
    connect(client_, &ClientPart::not_understood, wrong_, &Notice::say);
    column->addWidget(wrong_);
    column->addWidget(stylists_);
    column->addSpacing(space(2));
    column->addWidget(client_);
    column->addSpacing(space(2));
    add_ways_out(*column);
    column->addStretch();
    QScrollArea* side = make_scrolling_side(choices);
    side->setFixedWidth(space(side_steps));
    return side;
}

void RunningOrderScreen::add_choices(QVBoxLayout& column) {
    weddings_ = new WeddingChoice;
    connect(weddings_, &WeddingChoice::chosen, this, [this](WeddingId wedding) {
        wedding_ = wedding;
        notice_->say({});
        wrong_->say({});
        session_.attempt([this] { refresh(); });
    });
    anew_ = make_next_button(tr("Plan it anew"));
    anew_->setToolTip(tr("Drop what was changed by hand, for the best plan"));
    connect(anew_, &QPushButton::clicked, this, [this] {
        Morning after = morning_->morning;
        after.kept.clear();
        change(after, tr("planned the morning anew"));
    });
    column.addWidget(make_quiet(tr("Wedding")));
    column.addWidget(weddings_);
    column.addWidget(anew_);
}

void RunningOrderScreen::add_ways_out(QVBoxLayout& column) {
    ways_buttons_ = new QWidget;
    auto* part = new QVBoxLayout(ways_buttons_);
    part->setContentsMargins(0, 0, 0, 0);
    part->setSpacing(space(2));
    papers_ = new QComboBox;
    papers_->setAccessibleName(tr("Paper"));
    for (const Paper paper : all_papers) papers_->addItem(shown(paper));
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    QPushButton* print = make_button(tr("Print…"));
    QPushButton* pdf = make_button(tr("Save as PDF…"));
    connect(print, &QPushButton::clicked, this, [this] {
        session_.attempt([this] { ways_->ask_and_print(page(), tr("Print the running order")); });
    });
    connect(pdf, &QPushButton::clicked, this, &RunningOrderScreen::ask_where);
    part->addWidget(make_heading(tr("On paper")));
    part->addWidget(papers_);
    part->addWidget(print);
    part->addWidget(pdf);
    column.addWidget(ways_buttons_);
    column.addWidget(notice_);
}

void RunningOrderScreen::arrive(const Place& place) {
    if (place.wedding) wedding_ = place.wedding;
    notice_->say({});
    wrong_->say({});
}

void RunningOrderScreen::refresh() {
    wedding_ = weddings_->show_weddings(next_wedding_first(session_.library(), session_.today()),
                                        wedding_);
    pages_->setCurrentWidget(wedding_ ? going_ : static_cast<QWidget*>(empty_));
    if (!wedding_) return;
    const bool same = morning_ && morning_->wedding.id == *wedding_;
    if (!same) plan_.reset();
    morning_ = wedding_morning(session_.library(), *wedding_);
    planner_->plan(*morning_);
    show_wishes();
    show_plan();
}

void RunningOrderScreen::show_wishes() {
    stylists_->show_stylists(morning_->morning.stylists);
    QStringList names;
    for (const PartyMember& member : morning_->wedding.party) names << name_of(member.client);
    client_->show_morning(*morning_, names);
    const Paper usual = usual_paper(session_.library().settings());
    if (std::exchange(usual_paper_, usual) != usual) {
        papers_->setCurrentIndex(
            static_cast<int>(std::ranges::find(all_papers, usual) - all_papers.begin()));
    }
}

QString RunningOrderScreen::name_of(ClientId client) const {
    return from_utf8(session_.library().clients().find(client).value_or(Client{}).name);
}

std::optional<MorningPlan> RunningOrderScreen::plan_to_show() const {
    if (morning_->needs.clients.empty() || !planner_->refusal().isEmpty()) return std::nullopt;
    if (!morning_->morning.kept.empty()) return plan_of(*morning_);
    if (planner_->best()) return planner_->best();
    if (!plan_) return std::nullopt;
    MorningPlan former = *plan_;
    former.seats = still_fitting(former.seats, morning_->needs);
    former.consequences = check_morning(morning_->needs, former.seats);
    return former;
}

void RunningOrderScreen::show_plan() {
    if (plan_part_->is_held()) return;
    plan_ = plan_to_show();
    plan_part_->show_plan(*morning_, plan_, *planner_);
    ways_buttons_->setVisible(plan_ && !plan_->seats.empty());
    anew_->setEnabled(!morning_->morning.kept.empty());
}

void RunningOrderScreen::change(const Morning& after, const QString& said) {
    const bool kept = session_.change_records(change_morning(*wedding_, after, said));
    if (!kept) session_.attempt([this] { refresh(); });
}

void RunningOrderScreen::change_wish(ClientId client,
                                     const std::function<void(MorningWish&)>& how) {
    Morning after = morning_->morning;
    how(wish_of(after, client));
    change(after, tr("changed the morning of %1").arg(name_of(client)));
}

void RunningOrderScreen::move(const std::vector<Seat>& seats, ClientId client) {
    change(keeping(morning_->morning, seats),
           tr("moved %1 in the running order").arg(name_of(client)));
}

Paper RunningOrderScreen::paper() const {
    return all_papers[static_cast<std::size_t>(papers_->currentIndex())];
}

Document RunningOrderScreen::page() const {
    const auto ruler = make_text_ruler();
    return running_order_sheet(*morning_, *plan_, business_words(session_.library().settings()),
                               *ruler, paper());
}

void RunningOrderScreen::ask_where() {
    const auto file = ways_->ask_file(tr("Save the running order"),
                                      portable_name("Running order " + morning_->wedding.name),
                                      QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file) save_to(*file);
}

void RunningOrderScreen::save_to(const Path& file) {
    ways_->save(
        [morning = *morning_, plan = *plan_, paper = paper()](Library& library) {
            const auto ruler = make_text_ruler();
            return running_order_sheet(morning, plan, business_words(library.settings()), *ruler,
                                       paper);
        },
        file);
}

}  // namespace quarterturn
