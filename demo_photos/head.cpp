#include "demo_photos/head.h"

#include "demo_photos/hair/styles.h"
#include "demo_photos/picture/accessory.h"

namespace quarterturn::demo {

namespace {

Room light_room(const Lighting& lighting, const View& view) {
    // The chair is turned for every photo, so light follows the camera.
    const auto from = [&](float sideways, float height) {
        const float turn = degrees(view.azimuth_deg + sideways);
        const float up = degrees(height);
        return Vec3{std::sin(turn) * std::cos(up), std::sin(up), std::cos(turn) * std::cos(up)};
    };
    const float side = lighting.key_from_deg < 0.0F ? -1.0F : 1.0F;
    const float w = lighting.warmth;
    Room room;
    const float tip = std::max(0.0F, view.elevation_deg - 20.0F) * 0.35F;
    room.key = {from(lighting.key_from_deg, lighting.key_height_deg + tip),
                Vec3{1.62F + 0.12F * w, 1.55F, 1.46F - 0.18F * w} * lighting.key_power};
    room.fill = {from(-side * -58.0F, 14.0F + tip), Vec3{0.36F, 0.38F, 0.42F} * lighting.key_power};
    room.rim = {from(-side * -148.0F, 44.0F), Vec3{1.25F, 1.16F, 1.02F} * lighting.key_power};
    room.from_above = Vec3{0.40F, 0.41F, 0.43F} * lighting.key_power;
    room.from_below = Vec3{0.24F, 0.20F, 0.17F} * lighting.key_power;
    return room;
}

}  // namespace

struct Head::Parts {
    Sitter sitter;
    std::shared_ptr<const Clay> clay;
    HairCloud cloud;
    std::vector<Mesh> meshes;
    StrandSet hair;
    StrandSet brows;
    float hair_top = 12.3F;

    Parts(const Sitter& who, float fineness, std::shared_ptr<const Clay> given)
        : sitter(who),
          clay(given ? std::move(given) : mould(who.face, fineness)),
          cloud(clay->solid) {
        sitter.tone.face_width = who.face.width;
        sitter.tone.scalp = lerp(who.tone.skin * 0.5F, who.hair.root_colour * 1.2F, 0.86F);
        meshes.push_back(clay->skin);
        meshes.push_back(clay->cape);
        for (const float side : {-1.0F, 1.0F}) {
            meshes.push_back(
                make_ball(clay->shape.eye_centre(side), HeadShape::eye_radius, 48, Material::eye));
        }
        grow_hair(fineness);
        for (Mesh& part : make_accessory(sitter.hair, clay->solid, hair)) {
            meshes.push_back(std::move(part));
        }
        for (Mesh& part : make_stand()) {
            meshes.push_back(std::move(part));
        }
    }

    void grow_hair(float fineness) {
        HairPlan plan = sitter.hair;
        plan.strands = static_cast<std::uint32_t>(static_cast<float>(plan.strands) *
                                                  std::min(1.0F, 0.25F + 0.75F * fineness));
        const HairGround ground{clay->solid, scatter_roots(clay->skull, plan, plan.strands)};
        switch (plan.style) {
            case Style::brushed_out:
            case Style::waves_down:
                hair = let_down(ground, plan);
                break;
            case Style::low_bun:
                hair = low_bun(ground, plan);
                break;
            case Style::curls_pinned: {
                std::vector<CurlSeat> seats;
                hair = pin_curls(ground, plan, seats);
                meshes.push_back(make_clips(seats));
                break;
            }
        }
        // Fewer strands must weigh as much.
        const float thicker =
            static_cast<float>(sitter.hair.strands) / static_cast<float>(plan.strands);
        for (StrandLook& look : hair.looks) {
            look.width *= thicker;
        }
        brows = brows_and_lashes([this](Vec3 p) { return clay->shape.skin(p); }, sitter.face.width,
                                 sitter.brows, plan.seed);
        for (StrandSet* set : {&hair, &brows}) {
            for (const Vec3& p : set->points) {
                set->outwards.push_back(clay->solid.outward(p));
            }
        }
        for (const Vec3& p : hair.points) {
            if (std::abs(p.x) < 2.0F && std::abs(p.z + 1.0F) < 2.5F) {
                hair_top = std::max(hair_top, p.y);
            }
        }
        cloud.add(hair);
        cloud.measure_openness();
    }

    Marks mark(const Camera& camera, const View& view, cv::Size size) const {
        const auto seen = [&](Vec3 p) {
            const auto s = camera.project(p);
            return cv::Point2f(s.x * 0.5F, s.y * 0.5F);
        };
        Marks marks;
        const float azimuth = std::remainder(view.azimuth_deg, 360.0F);
        const bool front_half = std::abs(azimuth) <= 105.0F;
        if (view.elevation_deg > 45.0F) {
            marks.head_top = seen({0.0F, 5.0F, 8.7F});
            marks.head_bottom = seen({0.0F, 4.0F, -9.9F});
        } else {
            marks.head_top = seen({0.0F, hair_top, -1.0F});
            marks.head_bottom =
                front_half ? seen({0.0F, -9.35F, 7.0F}) : seen({0.0F, -5.8F, -7.0F});
        }
        float x0 = 1e9F;
        float y0 = 1e9F;
        float x1 = -1e9F;
        float y1 = -1e9F;
        const auto widen = [&](Vec3 p) {
            const auto at = seen(p);
            x0 = std::min(x0, at.x);
            y0 = std::min(y0, at.y);
            x1 = std::max(x1, at.x);
            y1 = std::max(y1, at.y);
        };
        for (const Vec3& p : meshes.front().points) {
            if (p.y > -9.6F && (p.z > 0.5F || p.y > -5.5F)) {
                widen(p);
            }
        }
        for (const Vec3& p : hair.points) {
            if (p.y > 3.0F && clay->solid.at(p) < 3.2F) {
                widen(p);
            }
        }
        marks.head_box = cv::Rect2f(x0, y0, x1 - x0, y1 - y0);
        const auto face = seen({0.0F, 0.5F, 9.0F});
        marks.face_visible = front_half && view.elevation_deg < 45.0F && face.x > 0 && face.y > 0 &&
                             face.x < static_cast<float>(size.width) &&
                             face.y < static_cast<float>(size.height);
        return marks;
    }
};

Head::Head(const Sitter& sitter, float fineness, std::shared_ptr<const Clay> clay)
    : parts_(std::make_unique<Parts>(sitter, fineness, std::move(clay))) {}
Head::~Head() = default;

Picture Head::photograph(const View& view, const Lighting& lighting, cv::Size size) {
    Parts& p = *parts_;
    const Room room = light_room(lighting, view);
    p.cloud.measure_light(Slot::key, room.key.towards);
    p.cloud.measure_light(Slot::fill, room.fill.towards);
    p.cloud.measure_light(Slot::rim, room.rim.towards);
    Canvas canvas(size.width * 2, size.height * 2);
    const Camera camera(view, canvas.width(), canvas.height());
    std::vector<const Mesh*> meshes;
    for (const Mesh& mesh : p.meshes) {
        canvas.draw_depth(mesh, camera, static_cast<std::uint16_t>(meshes.size()));
        meshes.push_back(&mesh);
    }
    const float pixels_per_cm = static_cast<float>(size.height) / view.frame_cm;
    const float share = std::clamp(pixels_per_cm / 26.0F, 0.25F, 1.0F);
    const auto shade_for = [&](const StrandSet& set) {
        return [&](std::uint32_t point, Vec3 along, const StrandLook& look, float t) {
            const Vec3 at = set.points[point];
            const Vec3 colour = lerp(look.root_colour, look.tip_colour, smoothstep(0.05F, 0.8F, t));
            return shade_hair(colour, look.shine, along, set.outwards[point],
                              normalize(camera.eye() - at), room, p.cloud.reach_at(at));
        };
    };
    canvas.draw_strands(p.hair, camera, shade_for(p.hair), share);
    canvas.draw_strands(p.brows, camera, shade_for(p.brows), 1.0F);
    const auto mesh_shade = [&](std::uint16_t number, std::uint32_t triangle, float u, float v,
                                float w) {
        const Mesh& mesh = *meshes[number];
        const auto& c = mesh.triangles[triangle];
        SurfacePoint at;
        at.point = mesh.points[c[0]] * u + mesh.points[c[1]] * v + mesh.points[c[2]] * w;
        at.normal =
            normalize(mesh.normals[c[0]] * u + mesh.normals[c[1]] * v + mesh.normals[c[2]] * w);
        at.tint = mesh.tints[c[0]];
        at.material = mesh.material;
        const Vec3 to_eye = normalize(camera.eye() - at.point);
        const bool two_sided = mesh.material == Material::petal || mesh.material == Material::gold;
        if (two_sided && dot(at.normal, to_eye) < 0.0F) {
            at.normal = -at.normal;
        }
        const bool mouth = mesh.material == Material::skin && at.point.z > 6.0F &&
                           std::abs(at.point.y + 4.8F) < 1.6F;
        const float lips = mouth ? p.clay->shape.lips(at.point) : 9.0F;
        return shade_surface(at, to_eye, room, p.cloud.reach_at(at.point + at.normal * 0.25F),
                             p.sitter.tone, lips);
    };
    canvas.colour_meshes(meshes, camera, mesh_shade);
    Picture picture;
    picture.linear =
        canvas.resolve(paint_backdrop(lighting.backdrop, view, size.width, size.height));
    picture.marks = p.mark(camera, view, size);
    return picture;
}

}  // namespace quarterturn::demo
