#include "indexer/sheet/running_order_sheet.h"

#include <algorithm>
#include <array>

#include "indexer/sheet/header.h"
#include "indexer/sheet/time_chart.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double row_gap = 0.8;  // mm below a line of the list

SheetContent running_order_content(const WeddingMorning& morning, const MorningPlan& plan,
                                   const std::string& business_line) {
    SheetContent content;
    content.title = "Running order, " + morning.wedding.name;
    content.header.client = morning.wedding.name;
    content.header.lines = wedding_words(morning.wedding);
    content.header.lines.front() = "Running order of the morning";
    if (!plan.seats.empty()) {
        content.header.state = "From " + minute_text(plan.seats.front().begins) + " on";
    }
    content.header.sentence = plan.by_hand ? "As changed by hand." : "";
    content.header.again = "Running order · " + morning.wedding.name;
    content.business_line = business_line;
    content.private_line.clear();
    return content;
}

// Read from a step back, on a sheet that holds nothing else.
constexpr double larger = 1.5;

SheetStyle across(Paper paper) {
    SheetStyle style = sheet_style(paper);
    style.paper = paper_size(paper, true);
    style.body_points *= larger;
    style.caption_points *= larger;
    return style;
}

using Row = std::array<std::string, 6>;
constexpr std::array row_shares{0.13, 0.09, 0.22, 0.16, 0.08, 0.32};  // of the width

Row row_of(const WeddingMorning& morning, const Seat& seat) {
    const auto client =
        std::ranges::find(morning.needs.clients, seat.client, &MorningClient::client);
    const auto place = static_cast<std::size_t>(client - morning.needs.clients.begin());
    const bool ends = seat.part == SeatPart::finish || !client->work.in_two_parts();
    std::string note = morning.looks[place];
    if (ends)
        note = "ready by " + minute_text(client->ready_by) + (note.empty() ? "" : " · ") + note;
    return {minute_text(seat.begins) + " to " + minute_text(seat.ends),
            "Stylist " + std::to_string(seat.stylist + 1),
            client->name,
            role_in(morning.wedding, seat.client),
            task_word(morning.needs, seat),
            note};
}

void put_row(SheetFlow& flow, const Row& row) {
    const SheetStyle& style = flow.style();
    double height = 0;
    double x = style.left();
    std::array<TextItem, 6> texts;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double width = style.width() * row_shares[i];
        texts[i] = text_item(row[i], style.body_points, i == 2);
        texts[i].align = Align::start;
        height = std::max(height, flow.height_of(texts[i], width - style.gutter));
    }
    if (flow.room() < height + row_gap) flow.new_page();
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double width = style.width() * row_shares[i];
        flow.put_text(texts[i], x, flow.y(), width - style.gutter, height);
        x += width;
    }
    flow.down(height + row_gap);
}

void put_sentence(SheetFlow& flow, const std::string& sentence) {
    const SheetStyle& style = flow.style();
    TextItem text = text_item(sentence, style.body_points, true);
    text.align = Align::start;
    const double height = flow.height_of(text, style.width());
    if (flow.room() < height) flow.new_page();
    flow.put_text(text, style.left(), flow.y(), style.width(), height);
    flow.down(height + row_gap);
}

}  // namespace

Document running_order_sheet(const WeddingMorning& morning, const MorningPlan& plan,
                             const std::string& business_line, TextRuler& ruler, Paper paper) {
    const SheetContent content = running_order_content(morning, plan, business_line);
    SheetFlow flow(content, across(paper), ruler);
    put_header(flow, content.header);
    put_time_chart(flow, morning.needs, plan.seats);
    for (const Seat& seat : plan.seats) put_row(flow, row_of(morning, seat));
    flow.down(flow.style().space);
    for (const auto* sentences :
         {&plan.consequences.lateness, &plan.consequences.broken, &morning.cannot}) {
        for (const std::string& sentence : *sentences) put_sentence(flow, sentence);
    }
    if (!morning.assumed.empty()) put_sentence(flow, morning.assumed);
    return flow.finish();
}

}  // namespace quarterturn
