#include "demo_photos/story/truth.h"

#include "demo_photos/device/clock.h"
#include "demo_photos/story/devices.h"

#include <cstdio>
#include <sstream>

namespace quarterturn::demo {

namespace {

const char* flaw_name(Flaw flaw) {
    switch (flaw) {
        case Flaw::none:
            return "none";
        case Flaw::out_of_focus:
            return "out_of_focus";
        case Flaw::moved:
            return "moved";
        case Flaw::too_dark:
            return "too_dark";
        case Flaw::blown_out:
            return "blown_out";
    }
    return "none";
}

std::string rounded(float value, int digits = 1) {
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", digits, static_cast<double>(value));
    return text;
}

std::string client_of(const Shot& shot) {
    return shot.sitting.empty() ? "" : shot.who == Who::a ? "a" : shot.who == Who::b ? "b" : "c";
}

}  // namespace

std::string truth_header() {
    return "file,device,true_time,file_time,utc_offset,clock_offset_seconds,client,sitting,look,"
           "stage,angle,azimuth_deg,"
           "elevation_deg,distance_cm,frame_cm,flaw,mirrored,burst,orientation,width,height,colour_"
           "profile,head_top_x,head_top_y,"
           "head_bottom_x,head_bottom_y,head_box_x,head_box_y,head_box_w,head_box_h,face_visible,"
           "suggested_angle";
}

std::string truth_row(const Shot& shot, const Marks& marks, cv::Size upright) {
    std::vector<std::string> cells;
    const auto add = [&](const std::string& cell) { cells.push_back(cell); };
    const bool camera = shot.device == Device::camera;
    add(shot.file);
    add(device_name(shot.device));
    add(shot.day + "T" + time_of_day(shot.millisecond));
    add(shot.day + "T" + time_of_day(file_millisecond(shot)));
    add(offset_on(shot.device, shot.day));
    add(std::to_string(camera ? camera_clock_offset_seconds : 0));
    add(client_of(shot));
    add(shot.sitting);
    add(shot.look);
    add(shot.stage);
    add(shot.angle);
    add(shot.still_life ? "" : rounded(std::remainder(shot.view.azimuth_deg, 360.0F)));
    add(shot.still_life ? "" : rounded(shot.view.elevation_deg));
    add(shot.still_life ? "" : rounded(shot.view.distance_cm));
    add(shot.still_life ? "" : rounded(shot.view.frame_cm));
    add(flaw_name(shot.develop.flaw));
    add(shot.mirrored ? "1" : "0");
    add(shot.burst);
    add(std::to_string(shot.orientation));
    add(std::to_string(upright.width));
    add(std::to_string(upright.height));
    add(shot.develop.colour == ColourSpace::display_p3 ? "display_p3" : "srgb");
    const auto width = static_cast<float>(upright.width);
    const auto across = [&](float x) { return shot.mirrored ? width - x : x; };
    const cv::Rect2f box = marks.head_box;
    const float left = shot.mirrored ? width - box.x - box.width : box.x;
    for (const float value :
         {across(marks.head_top.x), marks.head_top.y, across(marks.head_bottom.x),
          marks.head_bottom.y, left, box.y, box.width, box.height}) {
        add(shot.still_life ? "" : rounded(value));
    }
    add(marks.face_visible && !shot.still_life ? "1" : "0");
    add(!shot.keyword.empty() || !shot.name_end.empty() ? shot.angle : "");
    std::string row;
    for (const std::string& cell : cells) {
        row += (row.empty() ? "" : ",") + cell;
    }
    return row;
}

std::string tags_json(const std::vector<Shot>& shots) {
    std::ostringstream out;
    out << "{\n  \"photos\": [";
    const char* between = "\n";
    for (const Shot& shot : shots) {
        if (shot.look.empty()) {
            continue;
        }
        out << between << "    {\"file\": \"" << shot.file << "\", \"angle\": \"" << shot.angle
            << "\", \"stage\": \"" << shot.stage << "\", ";
        // Hair is brushed out once: a before photo serves every look of its sitting.
        if (shot.stage != "before") out << "\"look\": \"" << shot.look << "\", ";
        out << "\"mirrored\": " << (shot.mirrored ? "true" : "false") << "}";
        between = ",\n";
    }
    out << "\n  ]\n}\n";
    return out.str();
}

}  // namespace quarterturn::demo
