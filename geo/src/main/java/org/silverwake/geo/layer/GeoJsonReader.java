// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.LayerCrs;

/**
 * Reads GeoJSON (RFC 7946): a feature collection with its members in any order, one feature, or a bare geometry.
 * Without a {@code crs} member (GeoJSON 2008, still common) coordinates are WGS 84, longitude first (RFC 7946, 4).
 */
final class GeoJsonReader {
    private final JsonParser json;
    private final List<RawLayer.Feature> features = new ArrayList<>();
    private final Set<String> columns = new LinkedHashSet<>();
    private Optional<String> crs = Optional.empty();
    private Optional<String> name = Optional.empty();

    private GeoJsonReader(JsonParser json) {
        this.json = json;
    }

    static RawLayer read(Path file) throws IOException {
        try (JsonParser json = new JsonFactory().createParser(file.toFile())) {
            String fileName = String.valueOf(file.getFileName());
            return new GeoJsonReader(json).layer(fileName.replaceFirst("\\.[^.]*$", ""));
        } catch (JsonProcessingException e) {
            throw new GeoDataException(
                    place(e.getLocation()) + ": is not JSON (" + e.getOriginalMessage() + "); correct the file there",
                    e);
        }
    }

    private RawLayer layer(String fileName) throws IOException {
        if (json.nextToken() != JsonToken.START_OBJECT) {
            throw broken("a GeoJSON file holds one object in braces");
        }
        GeoJsonObject root = object(true);
        if (!root.isCollection()) {
            if (root.type().isEmpty()) {
                throw broken("is no GeoJSON: its outermost object has no \"type\"");
            }
            features.add(feature(root));
        }
        Optional<LayerCrs> assumed = crs.isPresent() ? Optional.empty() : Optional.of(LayerCrs.wgs84());
        return new RawLayer(name.orElse(fileName), List.copyOf(columns), crs, assumed, features, List.of());
    }

    /** One object in braces with the members that GeoJSON knows; the parser stands at its opening brace. */
    private GeoJsonObject object(boolean outermost) throws IOException {
        GeoJsonObject.Builder builder = new GeoJsonObject.Builder(place(json.currentTokenLocation()));
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String member = json.currentName();
            JsonToken token = json.nextToken();
            switch (member) {
                case "type" -> builder.type(json.getText());
                case "id" -> builder.id(token == JsonToken.VALUE_NULL ? null : json.getText());
                case "properties" -> builder.properties(properties());
                case "coordinates" -> builder.coordinates(token == JsonToken.START_ARRAY ? array() : null);
                case "geometry" -> builder.geometry(token == JsonToken.START_OBJECT ? object(false) : null);
                case "geometries" -> builder.geometries(objects());
                case "features" -> {
                    builder.collection();
                    readFeatures();
                }
                case "crs" -> readSystem();
                case "name" -> {
                    name = outermost && token == JsonToken.VALUE_STRING ? Optional.of(json.getText()) : name;
                    json.skipChildren();
                }
                default -> json.skipChildren();
            }
        }
        return builder.build();
    }

    private void readFeatures() throws IOException {
        if (json.currentToken() != JsonToken.START_ARRAY) {
            throw broken("\"features\" must be a list in square brackets");
        }
        while (json.nextToken() != JsonToken.END_ARRAY) {
            if (json.currentToken() != JsonToken.START_OBJECT) {
                throw broken("a feature must be an object in braces");
            }
            features.add(feature(object(false)));
        }
    }

    private List<GeoJsonObject> objects() throws IOException {
        List<GeoJsonObject> list = new ArrayList<>();
        if (json.currentToken() == JsonToken.START_ARRAY) {
            while (json.nextToken() == JsonToken.START_OBJECT) {
                list.add(object(false));
            }
        }
        return list;
    }

    private RawLayer.Feature feature(GeoJsonObject object) {
        Geometry geometry = object.featureGeometry();
        columns.addAll(object.properties().keySet());
        Map<String, Object> values = new LinkedHashMap<>(object.properties());
        values.values().removeIf(GeoJsonReader::isNull);
        return new RawLayer.Feature(object.id(), values, geometry);
    }

    private static boolean isNull(Object value) {
        return value == null;
    }

    private Map<String, Object> properties() throws IOException {
        Map<String, Object> values = new LinkedHashMap<>();
        if (json.currentToken() != JsonToken.START_OBJECT) {
            return values;
        }
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String column = json.currentName();
            values.put(column, value(json.nextToken()));
        }
        return values;
    }

    private Object value(JsonToken token) throws IOException {
        return switch (token) {
            case VALUE_NULL -> null;
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_STRING -> json.getText();
            case VALUE_NUMBER_FLOAT -> json.getDoubleValue();
            case VALUE_NUMBER_INT ->
                json.getNumberType() == JsonParser.NumberType.BIG_INTEGER
                        ? (Object) json.getText()
                        : (Object) json.getLongValue();
            default -> nested();
        };
    }

    /** A list or an object as its JSON text. */
    private String nested() throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.copyCurrentStructure(json);
        }
        return text.toString();
    }

    /** Positions as {@code double[]}, lists of them as lists. The parser stands at the opening bracket. */
    private Object array() throws IOException {
        JsonToken token = json.nextToken();
        if (token.isNumeric()) {
            return position(token);
        }
        List<Object> list = new ArrayList<>();
        while (token != JsonToken.END_ARRAY) {
            if (token != JsonToken.START_ARRAY) {
                throw broken("coordinates must be numbers in square brackets, found " + json.getText());
            }
            list.add(array());
            token = json.nextToken();
        }
        return list;
    }

    private double[] position(JsonToken first) throws IOException {
        double[] position = {Double.NaN, Double.NaN, Double.NaN};
        int count = 0;
        for (JsonToken token = first; token != JsonToken.END_ARRAY; token = json.nextToken()) {
            if (!token.isNumeric()) {
                throw broken("a position must be numbers, longitude first, found " + json.getText());
            }
            if (count < position.length) {
                position[count] = json.getDoubleValue();
            }
            count++;
        }
        if (count < 2) {
            throw broken("a position needs two numbers, longitude and latitude, found " + count);
        }
        return position;
    }

    private void readSystem() throws IOException {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            return;
        }
        String where = place(json.currentTokenLocation());
        String text = null;
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            boolean isProperties = json.currentName().equals("properties");
            json.nextToken();
            if (isProperties && properties().get("name") instanceof String code) {
                text = code;
            } else if (!isProperties) {
                json.skipChildren();
            }
        }
        if (text == null) {
            throw new GeoDataException(where + ": the \"crs\" member names no system; remove it for WGS 84, or name one"
                    + " such as urn:ogc:def:crs:EPSG::32726");
        }
        crs = Optional.of(text);
    }

    private GeoDataException broken(String what) {
        return new GeoDataException(place(json.currentTokenLocation()) + ": " + what);
    }

    private static String place(JsonLocation at) {
        return "line " + at.getLineNr() + ", column " + at.getColumnNr();
    }
}
